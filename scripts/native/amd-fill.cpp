// Entries below the diagonal of a Cholesky factor in the order of AMD of SuiteSparse, on grids of
// k × k nodes with 4 and with 8 neighbours: reference values for the ordering of
// packages/engine/src/membrane/sparse. Build and run:
//
//   g++ -O2 scripts/native/amd-fill.cpp -o amd-fill -lamd -lcholmod && ./amd-fill
//
// Debian: libsuitesparse-dev. Prints one JSON object, kept in check/amd-fill.json.
#include <cstdio>
#include <set>
#include <suitesparse/amd.h>
#include <utility>
#include <vector>

static long fillOf(int k, bool diagonals) {
  const int n = k * k;
  std::vector<std::set<int>> rows(n);
  auto join = [&](int i, int j) { rows[j].insert(i); rows[i].insert(j); };
  for (int i = 0; i < n; i++) {
    const bool up = i + k < n, right = i % k + 1 < k, left = i % k > 0;
    if (right) join(i, i + 1);
    if (up) join(i, i + k);
    if (diagonals && up && right) join(i, i + k + 1);
    if (diagonals && up && left) join(i, i + k - 1);
  }
  std::vector<int> start{0}, row, order(n);
  for (const auto &set : rows) {
    row.insert(row.end(), set.begin(), set.end());
    start.push_back(static_cast<int>(row.size()));
  }
  double info[AMD_INFO];
  amd_order(n, start.data(), row.data(), order.data(), nullptr, info);
  // Counted from the order itself: AMD_LNZ is only a bound.
  std::vector<int> place(n), parent(n, -1), seen(n, -1);
  for (int p = 0; p < n; p++) place[order[p]] = p;
  std::vector<int> ancestor(n, -1);
  long entries = 0;
  for (int p = 0; p < n; p++)
    for (int j : rows[order[p]])
      for (int i = place[j]; i != -1 && i < p;) {
        const int up = ancestor[i];
        ancestor[i] = p;
        if (up == -1) parent[i] = p;
        i = up;
      }
  for (int p = 0; p < n; p++) {
    seen[p] = p;
    for (int j : rows[order[p]])
      if (place[j] < p)
        for (int i = place[j]; seen[i] != p; i = parent[i]) {
          seen[i] = p;
          entries++;
        }
  }
  return entries;
}

int main() {
  std::printf("{\n  \"version\": \"SuiteSparse AMD %d.%d.%d\"", AMD_MAIN_VERSION, AMD_SUB_VERSION,
              AMD_SUBSUB_VERSION);
  for (bool diagonals : {false, true})
    for (int k : {16, 32, 48, 64, 96})
      std::printf(",\n  \"%s-%d\": %ld", diagonals ? "eight" : "four", k, fillOf(k, diagonals));
  std::printf("\n}\n");
}
