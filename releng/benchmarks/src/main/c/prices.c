/* Series of prices, then sums of quantities at prices, for draws of fields: the yardstick of sweeps over prices.
   prices DATA DRAWS < values of 1024 draws; prints nanoseconds per draw and the sum of the first results. */
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

int main(int argc, char **argv) {
    FILE *data = fopen(argv[1], "r");
    long draws = atol(argv[2]);
    int fields, years, series, sums;
    if (!data || fscanf(data, "%d %d %d", &fields, &years, &series) != 3) return 1;
    int *base = malloc(series * sizeof(int)), *rise = malloc(series * sizeof(int)), *start = malloc(series * sizeof(int));
    double *present = malloc(series * sizeof(double)), *fixed = malloc(series * sizeof(double));
    for (int s = 0; s < series; s++)
        if (fscanf(data, "%d %d %lf %lf %d", base + s, rise + s, present + s, fixed + s, start + s) != 5) return 1;
    if (fscanf(data, "%d", &sums) != 1) return 1;
    int *count = malloc(sums * sizeof(int)), **place = malloc(sums * sizeof(int *));
    double **quantity = malloc(sums * sizeof(double *));
    for (int i = 0; i < sums; i++) {
        if (fscanf(data, "%d", count + i) != 1) return 1;
        place[i] = malloc(count[i] * sizeof(int));
        quantity[i] = malloc(count[i] * sizeof(double));
        for (int k = 0; k < count[i]; k++)
            if (fscanf(data, "%d %lf", place[i] + k, quantity[i] + k) != 2) return 1;
    }
    double *values = malloc(1024 * fields * sizeof(double));
    for (int i = 0; i < 1024 * fields; i++)
        if (scanf("%lf", values + i) != 1) return 1;
    double *price = malloc(series * years * sizeof(double)), *result = malloc(sums * sizeof(double)), total = 0;
    struct timespec from, to;
    clock_gettime(CLOCK_MONOTONIC, &from);
    for (long d = 0; d < draws; d++) {
        const double *v = values + (d & 1023) * fields;
        for (int s = 0; s < series; s++) {
            double growth = 1 + (rise[s] < 0 ? fixed[s] : v[rise[s]]);
            double p = base[s] < 0 ? present[s] : v[base[s]];
            if (start[s]) p *= growth;
            for (int y = 0; y < years; y++, p *= growth) price[s * years + y] = p;
        }
        for (int i = 0; i < sums; i++) {
            double sum = 0;
            for (int k = 0; k < count[i]; k++) sum += quantity[i][k] * price[place[i][k]];
            result[i] = sum;
        }
        total += result[0];
    }
    clock_gettime(CLOCK_MONOTONIC, &to);
    printf("%.3f %.17g\n", ((to.tv_sec - from.tv_sec) * 1e9 + (to.tv_nsec - from.tv_nsec)) / draws, total);
    return 0;
}
