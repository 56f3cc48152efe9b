/*
 * The radial slice of HeatWork.Slice by CVODE (BDF, banded Newton) on the same nodes: a resin cylinder of 30 mm radius in steel to
 * 45 mm, all at 20 C, h 8. Written without the engine; only the place of the nodes is the same.
 *
 *   slice <rings> <wall rings> <tolerance K> <tolerance of degree> <runs>
 */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

#define R_GAS 8.314462618
#define ZERO_C 273.15
#define MOST 2000

static int rings, wall, nodes;
static double capacity[MOST], heat[MOST], conductance[MOST], film;

/* Resin nodes have two unknowns, temperature and degree; steel nodes have one. */
static int at(int node) { return node <= rings ? 2 * node : 2 * (rings + 1) + node - rings - 1; }

static void build(void)
{
    double r[MOST];
    nodes = rings + wall + 1;
    for (int i = 0; i <= rings; i++) {
        double x = (double)i / rings;
        r[i] = 0.030 * x * (1.5 - 0.5 * x);
    }
    for (int i = 1; i <= wall; i++) r[rings + i] = 0.030 + 0.015 * i / wall;
    for (int i = 0; i < nodes; i++) {
        double low = i == 0 ? 0 : (r[i - 1] + r[i]) / 2, high = i == nodes - 1 ? r[i] : (r[i] + r[i + 1]) / 2;
        double inner = i == 0 ? 0 : M_PI * (r[i] * r[i] - low * low), outer = i == nodes - 1 ? 0 : M_PI * (high * high - r[i] * r[i]);
        double steel = 7850.0 * 460.0, resin = 1750.0 * 1250.0, cure = 0.45 * 1750.0 * 350e3;
        capacity[i] = inner * (i <= rings ? resin : steel) + outer * (i < rings ? resin : steel);
        heat[i] = cure * (inner * (i <= rings) + outer * (i < rings));
        if (i < nodes - 1) conductance[i] = 2 * M_PI * high * (i < rings ? 0.6 : 50.0) / (r[i + 1] - r[i]);
    }
    film = 2 * M_PI * r[nodes - 1] * 8.0;
}

static double rate(double a, double T)
{
    if (a < 0) a = 0;
    if (a > 1) a = 1;
    double x = -1 / (R_GAS * T);
    return (1.2e7 * exp(68e3 * x) + 1.5e8 * exp(60e3 * x) * pow(a, 0.9)) * pow(1 - a, 1.6);
}

static int slopes(realtype t, N_Vector y, N_Vector dy, void *unused)
{
    (void)t; (void)unused;
    const double *u = N_VGetArrayPointer(y);
    double *d = N_VGetArrayPointer(dy), before = 0;
    for (int i = 0; i < nodes; i++) {
        double T = u[at(i)];
        double after = i < nodes - 1 ? conductance[i] * (T - u[at(i + 1)]) : film * (T - ZERO_C - 20);
        double flow = before - after;
        if (i <= rings) {
            d[at(i) + 1] = rate(u[at(i) + 1], T);
            flow += heat[i] * d[at(i) + 1];
        }
        d[at(i)] = flow / capacity[i];
        before = after;
    }
    return 0;
}

struct peak { int index; double value, time; };

static void look(struct peak *p, void *cvode, double from, double to, N_Vector scratch)
{
    const double *u = N_VGetArrayPointer(scratch);
    int better = 0;
    for (int s = 0; s <= 4; s++) {
        double t = from + (to - from) * s / 4;
        CVodeGetDky(cvode, t, 0, scratch);
        if (u[p->index] > p->value) { p->value = u[p->index]; p->time = t; better = 1; }
    }
    if (!better) return;
    double low = fmax(from, p->time - (to - from) / 4), high = fmin(to, p->time + (to - from) / 4);
    for (int i = 0; i < 40; i++) {
        double a = low + (high - low) / 3, b = high - (high - low) / 3, va, vb;
        CVodeGetDky(cvode, a, 0, scratch); va = u[p->index];
        CVodeGetDky(cvode, b, 0, scratch); vb = u[p->index];
        if (va < vb) low = a; else high = b;
    }
    p->time = (low + high) / 2;
    CVodeGetDky(cvode, p->time, 0, scratch);
    p->value = fmax(p->value, u[p->index]);
}

/* When the degree of a node passes a value inside the last step. */
static double crossing(void *cvode, int index, double degree, double from, double to, N_Vector scratch)
{
    for (int i = 0; i < 50; i++) {
        double t = (from + to) / 2;
        CVodeGetDky(cvode, t, 0, scratch);
        if (N_VGetArrayPointer(scratch)[index] < degree) from = t; else to = t;
    }
    return to;
}

static double now(void)
{
    struct timespec t;
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return t.tv_sec * 1e3 + t.tv_nsec * 1e-6;
}

static int compare(const void *a, const void *b) { return (*(const double *)a > *(const double *)b) - (*(const double *)a < *(const double *)b); }

int main(int count, char **args)
{
    if (count != 6) return 2;
    rings = atoi(args[1]); wall = atoi(args[2]);
    double tolT = atof(args[3]), tolA = atof(args[4]);
    int runs = atoi(args[5]);
    double *times = malloc(runs * sizeof *times);
    build();
    int size = nodes + rings + 1;
    SUNContext context;
    SUNContext_Create(NULL, &context);
    struct peak centre = { 0 }, outside = { 0 };
    double first = 0, gel = 0, last = 0;
    long steps = 0, calls = 0, factors = 0;
    /* The last run is watched, which costs more than the steps; it isn't timed. */
    for (int run = 0; run <= runs; run++) {
        double begin = now();
        N_Vector y = N_VNew_Serial(size, context), tolerance = N_VNew_Serial(size, context), scratch = N_VNew_Serial(size, context);
        double *u = N_VGetArrayPointer(y), *e = N_VGetArrayPointer(tolerance);
        for (int i = 0; i < nodes; i++) {
            u[at(i)] = ZERO_C + 20; e[at(i)] = tolT;
            if (i <= rings) { u[at(i) + 1] = 0; e[at(i) + 1] = tolA; }
        }
        void *cvode = CVodeCreate(CV_BDF, context);
        CVodeInit(cvode, slopes, 0, y);
        CVodeSVtolerances(cvode, 0, tolerance);
        CVodeSetMaxNumSteps(cvode, 1000000);
        SUNMatrix matrix = SUNBandMatrix(size, 2, 2, context);
        SUNLinearSolver solver = SUNLinSol_Band(y, matrix, context);
        CVodeSetLinearSolver(cvode, solver, matrix);
        centre = (struct peak){ at(0), 0, 0 };
        outside = (struct peak){ at(nodes - 1), 0, 0 };
        first = gel = last = 0;
        realtype t = 0;
        while (t < 6 * 3600) {
            double from = t, axis = u[1], skin = u[at(rings) + 1];
            if (CVode(cvode, 6 * 3600, y, &t, CV_ONE_STEP) < 0) return 1;
            if (run < runs) {
                if (u[at(rings) + 1] >= .99) break;
                continue;
            }
            look(&centre, cvode, from, t, scratch);
            look(&outside, cvode, from, t, scratch);
            if (axis < .05 && u[1] >= .05) first = crossing(cvode, 1, .05, from, t, scratch);
            if (skin < .05 && u[at(rings) + 1] >= .05) gel = crossing(cvode, at(rings) + 1, .05, from, t, scratch);
            if (skin < .95 && u[at(rings) + 1] >= .95) last = crossing(cvode, at(rings) + 1, .95, from, t, scratch);
        }
        CVodeGetNumSteps(cvode, &steps);
        CVodeGetNumRhsEvals(cvode, &calls);
        CVodeGetNumLinSolvSetups(cvode, &factors);
        CVodeFree(&cvode);
        SUNLinSolFree(solver); SUNMatDestroy(matrix);
        N_VDestroy(y); N_VDestroy(tolerance); N_VDestroy(scratch);
        if (run < runs) times[run] = now() - begin;
    }
    qsort(times, runs, sizeof *times, compare);
    printf("centre %.4f C at %.4f min, outside %.4f C at %.3f min, degree .05 first %.4f, everywhere %.4f, .95 everywhere %.4f min\n",
        centre.value - ZERO_C, centre.time / 60, outside.value - ZERO_C, outside.time / 60, first / 60, gel / 60, last / 60);
    printf("to 6 h %ld steps, %ld calls of the slopes, %ld factors; to a degree of .99 everywhere %.3f ms of CPU (median of %d runs)\n", steps, calls, factors, times[runs / 2], runs);
    return 0;
}
