// Native sparse Cholesky to hold the solver of packages/engine/src/membrane/sparse against.
//
//   sparse-cholesky FILE ROUNDS
//
// FILE: int32 n, int32 entries, int32 colPtr[n + 1], int32 rowIdx[entries] (upper triangle by
// columns), double values[entries], double b[n]; little-endian. Every method orders and analyses
// once, then factorises and solves ROUNDS times. Prints one JSON object: for each method the
// milliseconds of every round and the largest |b − A x| it left.
// Built with WITH_EIGEN (Debian: libeigen3-dev) and WITH_CHOLMOD (libsuitesparse-dev, -lcholmod).
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <string>
#include <vector>
#ifdef WITH_EIGEN
#include <eigen3/Eigen/SparseCholesky>
#endif
#ifdef WITH_CHOLMOD
#include <suitesparse/cholmod.h>
#endif

struct Problem {
  int32_t n = 0, entries = 0;
  std::vector<int32_t> colPtr, rowIdx;
  std::vector<double> values, b;
};

template <class T> static void readInto(std::FILE *file, std::vector<T> &into, size_t count) {
  into.resize(count);
  if (std::fread(into.data(), sizeof(T), count, file) != count) {
    std::fprintf(stderr, "the matrix file is too short\n");
    std::exit(1);
  }
}

static Problem readProblem(const char *name) {
  std::FILE *file = std::fopen(name, "rb");
  if (file == nullptr) {
    std::perror(name);
    std::exit(1);
  }
  Problem p;
  std::vector<int32_t> head;
  readInto(file, head, 2);
  p.n = head[0];
  p.entries = head[1];
  readInto(file, p.colPtr, p.n + 1);
  readInto(file, p.rowIdx, p.entries);
  readInto(file, p.values, p.entries);
  readInto(file, p.b, p.n);
  std::fclose(file);
  return p;
}

static double largestResidual(const Problem &p, const double *x) {
  std::vector<double> r = p.b;
  for (int j = 0; j < p.n; j++)
    for (int at = p.colPtr[j]; at < p.colPtr[j + 1]; at++) {
      const int i = p.rowIdx[at];
      r[i] -= p.values[at] * x[j];
      if (i != j) r[j] -= p.values[at] * x[i];
    }
  double largest = 0;
  for (double value : r) largest = std::fmax(largest, std::fabs(value));
  return largest;
}

static bool first = true;

// Two rounds warm up; `round` leaves its solution where `solution` finds it.
static void measure(const char *name, const Problem &p, int rounds, const std::function<void()> &round,
                    const std::function<const double *()> &solution) {
  std::printf("%s\"%s\":{\"ms\":[", first ? "" : ",", name);
  first = false;
  for (int k = -2; k < rounds; k++) {
    const auto start = std::chrono::steady_clock::now();
    round();
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    if (k >= 0) std::printf("%s%.4f", k > 0 ? "," : "", took.count());
  }
  std::printf("],\"residual\":%.3e}", largestResidual(p, solution()));
}

#ifdef WITH_EIGEN
static void withEigen(const Problem &p, int rounds) {
  using Matrix = Eigen::SparseMatrix<double>;
  const Eigen::Map<const Matrix> a(p.n, p.n, p.entries, p.colPtr.data(), p.rowIdx.data(), p.values.data());
  const Eigen::Map<const Eigen::VectorXd> b(p.b.data(), p.n);
  const Matrix matrix = a;
  Eigen::SimplicialLLT<Matrix, Eigen::Upper> solver;
  solver.analyzePattern(matrix);
  Eigen::VectorXd x;
  measure("Eigen SimplicialLLT", p, rounds,
          [&] { solver.factorize(matrix); x = solver.solve(b); }, [&] { return x.data(); });
}
#endif

#ifdef WITH_CHOLMOD
static void withCholmod(const Problem &p, int rounds, const char *name, int kind) {
  cholmod_common common;
  cholmod_start(&common);
  common.supernodal = kind;
  cholmod_sparse *a = cholmod_allocate_sparse(p.n, p.n, p.entries, 1, 1, 1, CHOLMOD_REAL, &common);
  std::copy(p.colPtr.begin(), p.colPtr.end(), static_cast<int32_t *>(a->p));
  std::copy(p.rowIdx.begin(), p.rowIdx.end(), static_cast<int32_t *>(a->i));
  std::copy(p.values.begin(), p.values.end(), static_cast<double *>(a->x));
  cholmod_dense *b = cholmod_allocate_dense(p.n, 1, p.n, CHOLMOD_REAL, &common);
  std::copy(p.b.begin(), p.b.end(), static_cast<double *>(b->x));
  cholmod_factor *factor = cholmod_analyze(a, &common);
  cholmod_dense *x = nullptr;
  measure(name, p, rounds,
          [&] {
            cholmod_free_dense(&x, &common);
            cholmod_factorize(a, factor, &common);
            x = cholmod_solve(CHOLMOD_A, factor, b, &common);
          },
          [&] { return static_cast<const double *>(x->x); });
  cholmod_free_dense(&x, &common);
  cholmod_free_dense(&b, &common);
  cholmod_free_factor(&factor, &common);
  cholmod_free_sparse(&a, &common);
  cholmod_finish(&common);
}
#endif

int main(int count, char **given) {
  if (count != 3) {
    std::fprintf(stderr, "usage: sparse-cholesky FILE ROUNDS\n");
    return 1;
  }
  const Problem p = readProblem(given[1]);
  const int rounds = std::atoi(given[2]);
  std::printf("{");
#ifdef WITH_EIGEN
  withEigen(p, rounds);
#endif
#ifdef WITH_CHOLMOD
  withCholmod(p, rounds, "CHOLMOD simplicial", CHOLMOD_SIMPLICIAL);
  withCholmod(p, rounds, "CHOLMOD supernodal", CHOLMOD_SUPERNODAL);
#endif
  std::printf("}\n");
  return 0;
}
