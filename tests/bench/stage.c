/*
 * The stage of calculators/models/conduction/voxel-kernel.ts in plain C, for npm run bench to compare with.
 *   stage FILE ROUNDS
 * FILE holds: nx ny nz guard as int32; six float32 (back, seconds, solidus, full, inRange, inLiquid); eight
 * float32 kelvin per joule; then seven arrays of count + 2 guard float32 (heat 0 and 1, temperature 0 and 1,
 * to the next along x, y, z) and count bytes of region. Runs pairs of stages, prints the least seconds of a
 * stage and the sum of the temperatures after the first pair.
 */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static void stage(long count, long nx, long plane, const float *restrict now, float *restrict next,
                  const float *restrict t, float *restrict warm, const float *restrict east,
                  const float *restrict north, const float *restrict up, const uint8_t *restrict region,
                  const float *gain, float back, float solidus, float full, float inRange, float inLiquid) {
  for (long at = 0; at < count; at += 1) {
    const float here = t[at];
    const float inflow = east[at - 1] * (t[at - 1] - here) + east[at] * (t[at + 1] - here) +
                         north[at - nx] * (t[at - nx] - here) + north[at] * (t[at + nx] - here) +
                         up[at - plane] * (t[at - plane] - here) + up[at] * (t[at + plane] - here);
    const int what = region[at];
    const float h = now[at] - back * (now[at] - next[at]) + gain[what] * inflow;
    const float below = h < solidus ? h : solidus;
    const float capped = h < full ? h : full;
    const float held = capped > solidus ? capped : solidus;
    const float above = h > full ? h - full : 0.0f;
    next[at] = h;
    warm[at] = what > 0 ? h : below + inRange * (held - solidus) + inLiquid * above;
  }
}

static double seconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return now.tv_sec + 1e-9 * now.tv_nsec;
}

int main(int argc, char **argv) {
  if (argc != 3) return 2;
  FILE *file = fopen(argv[1], "rb");
  int32_t size[4];
  float number[6], perHeat[8], gain[8];
  if (!file || fread(size, 4, 4, file) != 4 || fread(number, 4, 6, file) != 6 || fread(perHeat, 4, 8, file) != 8)
    return 1;
  const long nx = size[0], plane = nx * size[1], count = plane * size[2], guard = size[3];
  const size_t length = count + 2 * guard;
  float *array[7];
  for (int n = 0; n < 7; n += 1) {
    /* Apart by an odd number of cache lines, as the compiled kernel keeps them. */
    array[n] = (float *)aligned_alloc(64, ((length * 4 + 4096) / 64 + 1) * 64) + 16 * n;
    if (fread(array[n], 4, length, file) != length) return 1;
  }
  uint8_t *region = malloc(count);
  if (fread(region, 1, count, file) != (size_t)count) return 1;
  fclose(file);
  for (int n = 0; n < 8; n += 1) gain[n] = perHeat[n] * number[1];
  double best = 1e9, sum = 0;
  for (int round = 0; round < atoi(argv[2]); round += 1) {
    const double start = seconds();
    for (int n = 0; n < 2; n += 1)
      stage(count, nx, plane, array[n] + guard, array[1 - n] + guard, array[2 + n] + guard,
            array[3 - n] + guard, array[4] + guard, array[5] + guard, array[6] + guard, region, gain,
            number[0], number[2], number[3], number[4], number[5]);
    const double each = (seconds() - start) / 2;
    if (each < best) best = each;
    if (round == 0)
      for (long at = 0; at < count; at += 1) sum += array[2][at + guard];
  }
  printf("%.9g %.9g\n", best, sum);
  return 0;
}
