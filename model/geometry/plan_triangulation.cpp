#include "model/geometry/plan_triangulation.h"

#include <algorithm>
#include <deque>
#include <numeric>

namespace model {

namespace {

std::uint32_t after(std::uint32_t k) { return k == 2 ? 0 : k + 1; }
std::uint32_t before(std::uint32_t k) { return k == 0 ? 2 : k - 1; }

}  // namespace

PlanTriangulation::PlanTriangulation(const std::vector<GridPoint>& points)
    : points_(points),
      cellAt_(points.size(), kNoCell),
      next_(points.size()),
      previous_(points.size()),
      hullSide_(points.size()) {
  sweep();
}

std::uint32_t PlanTriangulation::addCell(std::uint32_t a, std::uint32_t b, std::uint32_t c) {
  const auto index = static_cast<std::uint32_t>(cells_.size());
  PlanCell cell;
  cell.corners = {a, b, c};
  cells_.push_back(cell);
  for (const std::uint32_t p : cell.corners) cellAt_[p] = index;
  return index;
}

void PlanTriangulation::join(Side s, Side t) {
  if (s.cell != kNoCell) cells_[s.cell].beyond[s.k] = t.cell;
  if (t.cell != kNoCell) cells_[t.cell].beyond[t.k] = s.cell;
}

// Points from west to east; each is joined to the part of the hull that it sees.
void PlanTriangulation::sweep() {
  std::vector<std::uint32_t> order(points_.size());
  std::iota(order.begin(), order.end(), 0u);
  std::sort(order.begin(), order.end(), [&](std::uint32_t i, std::uint32_t j) {
    const GridPoint &p = points_[i], &q = points_[j];
    return p.x != q.x ? p.x < q.x : p.y < q.y;
  });
  const std::uint32_t done = startHull(order);
  for (std::uint32_t i = done; i < order.size(); ++i) extendHull(order[i - 1], order[i]);
}

// The first points may lie on one line: a fan from the first that does not.
std::uint32_t PlanTriangulation::startHull(const std::vector<std::uint32_t>& order) {
  std::uint32_t k = 2;
  const auto n = static_cast<std::uint32_t>(order.size());
  while (k < n && sideOf(points_[order[0]], points_[order[1]], points_[order[k]]) == 0) ++k;
  if (k >= n) return n;
  const bool left = sideOf(points_[order[0]], points_[order[1]], points_[order[k]]) > 0;
  std::vector<std::uint32_t> chain(order.begin(), order.begin() + k);
  if (!left) std::reverse(chain.begin(), chain.end());
  const std::uint32_t tip = order[k];
  for (std::uint32_t i = 0; i + 1 < k; ++i) {
    const std::uint32_t cell = addCell(chain[i], chain[i + 1], tip);
    hullSide_[chain[i]] = {cell, 0};
    if (i > 0) join({cell, 2}, {cell - 1, 1});
  }
  hullSide_[chain[k - 1]] = {static_cast<std::uint32_t>(cells_.size() - 1), 1};
  hullSide_[tip] = {0, 2};
  chain.push_back(tip);
  for (std::uint32_t i = 0; i <= k; ++i) {
    next_[chain[i]] = chain[(i + 1) % (k + 1)];
    previous_[chain[(i + 1) % (k + 1)]] = chain[i];
  }
  return k + 1;
}

void PlanTriangulation::extendHull(std::uint32_t last, std::uint32_t p) {
  const auto sees = [&](std::uint32_t a, std::uint32_t b) {
    return sideOf(points_[a], points_[b], points_[p]) < 0;
  };
  Side toPoint, fromPoint;  // sides last -> p of the forward fan, p -> last of the backward fan
  Side open{};              // the fan's open side so far
  std::uint32_t ahead = last;
  while (sees(ahead, next_[ahead])) {
    const std::uint32_t cell = addCell(next_[ahead], ahead, p);
    join({cell, 0}, hullSide_[ahead]);
    if (open.cell == kNoCell)
      toPoint = {cell, 1};
    else
      join({cell, 1}, open);
    open = {cell, 2};
    ahead = next_[ahead];
  }
  const Side openAhead = open;
  open = {};
  std::uint32_t behind = last;
  while (sees(previous_[behind], behind)) {
    const std::uint32_t cell = addCell(behind, previous_[behind], p);
    join({cell, 0}, hullSide_[previous_[behind]]);
    if (open.cell == kNoCell)
      fromPoint = {cell, 2};
    else
      join({cell, 2}, open);
    open = {cell, 1};
    behind = previous_[behind];
  }
  if (toPoint.cell != kNoCell && fromPoint.cell != kNoCell) join(toPoint, fromPoint);
  hullSide_[behind] = open.cell != kNoCell ? open : toPoint;
  hullSide_[p] = openAhead.cell != kNoCell ? openAhead : fromPoint;
  next_[behind] = p;
  previous_[p] = behind;
  next_[p] = ahead;
  previous_[ahead] = p;
}

PlanTriangulation::Side PlanTriangulation::twin(Side s) const {
  const std::uint32_t other = cells_[s.cell].beyond[s.k];
  if (other == kNoCell) return {};
  const std::uint32_t from = cells_[s.cell].corners[after(s.k)];
  for (std::uint32_t k = 0; k < 3; ++k) {
    if (cells_[other].corners[k] == from) return {other, k};
  }
  return {};
}

// The side that runs from a to b, looking at every cell round a.
PlanTriangulation::Side PlanTriangulation::sideFrom(std::uint32_t a, std::uint32_t b) const {
  for (const bool forward : {true, false}) {
    std::uint32_t cell = cellAt_[a];
    do {
      const PlanCell& c = cells_[cell];
      const std::uint32_t k = c.corners[0] == a ? 0u : c.corners[1] == a ? 1u : 2u;
      if (c.corners[after(k)] == b) return {cell, k};
      cell = forward ? c.beyond[before(k)] : c.beyond[k];
    } while (cell != kNoCell && cell != cellAt_[a]);
    if (cell != kNoCell) break;  // went all the way round
  }
  return {};
}

bool PlanTriangulation::convex(Side s) const {
  const Side t = twin(s);
  if (t.cell == kNoCell) return false;
  const GridPoint& a = points_[cells_[s.cell].corners[s.k]];
  const GridPoint& b = points_[cells_[s.cell].corners[after(s.k)]];
  const GridPoint& c = points_[cells_[s.cell].corners[before(s.k)]];
  const GridPoint& d = points_[cells_[t.cell].corners[before(t.k)]];
  return sideOf(c, d, b) > 0 && sideOf(c, d, a) < 0;
}

// Cells (a, b, c) and (b, a, d) become (c, a, d) and (d, b, c).
void PlanTriangulation::flip(Side s) {
  const Side t = twin(s);
  PlanCell &one = cells_[s.cell], &two = cells_[t.cell];
  const std::uint32_t a = one.corners[s.k], b = one.corners[after(s.k)];
  const std::uint32_t c = one.corners[before(s.k)], d = two.corners[before(t.k)];
  const Side bc{s.cell, after(s.k)}, ca{s.cell, before(s.k)};
  const Side ad{t.cell, after(t.k)}, db{t.cell, before(t.k)};
  const Side outBc = twin(bc), outCa = twin(ca), outAd = twin(ad), outDb = twin(db);
  const bool cutBc = one.cut[bc.k], cutCa = one.cut[ca.k];
  const bool cutAd = two.cut[ad.k], cutDb = two.cut[db.k];
  one.corners = {c, a, d};
  one.cut = {cutCa, cutAd, false};
  two.corners = {d, b, c};
  two.cut = {cutDb, cutBc, false};
  join({s.cell, 0}, outCa);
  join({s.cell, 1}, outAd);
  join({t.cell, 0}, outDb);
  join({t.cell, 1}, outBc);
  join({s.cell, 2}, {t.cell, 2});
  cellAt_[a] = cellAt_[c] = cellAt_[d] = s.cell;
  cellAt_[b] = t.cell;
}

bool PlanTriangulation::firstCrossed(std::uint32_t a, std::uint32_t b, Side& side,
                                     std::uint32_t& onLine) const {
  const GridPoint &from = points_[a], &to = points_[b];
  const auto aheadOf = [&](const GridPoint& p) {
    return static_cast<double>(p.x - from.x) * static_cast<double>(to.x - from.x) +
               static_cast<double>(p.y - from.y) * static_cast<double>(to.y - from.y) >
           0;
  };
  for (const bool forward : {true, false}) {
    std::uint32_t cell = cellAt_[a];
    do {
      const PlanCell& c = cells_[cell];
      const std::uint32_t k = c.corners[0] == a ? 0u : c.corners[1] == a ? 1u : 2u;
      const std::uint32_t p = c.corners[after(k)], q = c.corners[before(k)];
      const int sideP = sideOf(from, to, points_[p]), sideQ = sideOf(from, to, points_[q]);
      if (sideP == 0 && aheadOf(points_[p])) return onLine = p, true;
      if (sideQ == 0 && aheadOf(points_[q])) return onLine = q, true;
      if (sideP < 0 && sideQ > 0) return side = {cell, after(k)}, true;
      cell = forward ? c.beyond[before(k)] : c.beyond[k];
    } while (cell != kNoCell && cell != cellAt_[a]);
    if (cell != kNoCell) break;
  }
  return false;
}

void PlanTriangulation::force(std::uint32_t a, std::uint32_t b) {
  using Ends = std::array<std::uint32_t, 2>;
  std::deque<Ends> crossed;
  while (a != b) {
    Side side;
    std::uint32_t end = kNoCell;
    if (!firstCrossed(a, b, side, end)) return;
    while (end == kNoCell) {
      crossed.push_back(
          {cells_[side.cell].corners[side.k], cells_[side.cell].corners[after(side.k)]});
      const Side t = twin(side);
      const std::uint32_t r = cells_[t.cell].corners[before(t.k)];
      const int where = sideOf(points_[a], points_[b], points_[r]);
      // t runs from left to right of the line; go on through the side that the line leaves by.
      if (where == 0)
        end = r;
      else
        side = where > 0 ? Side{t.cell, after(t.k)} : Side{t.cell, before(t.k)};
    }
    while (!crossed.empty()) {
      const Ends ends = crossed.front();
      crossed.pop_front();
      const Side s = sideFrom(ends[0], ends[1]);
      if (!convex(s)) {
        crossed.push_back(ends);
        continue;
      }
      const Side t = twin(s);
      const std::uint32_t c = cells_[s.cell].corners[before(s.k)];
      const std::uint32_t d = cells_[t.cell].corners[before(t.k)];
      flip(s);
      if (c == a || c == end || d == a || d == end) continue;
      const int sideC = sideOf(points_[a], points_[end], points_[c]);
      if (sideC * sideOf(points_[a], points_[end], points_[d]) < 0) crossed.push_back({c, d});
    }
    const Side s = sideFrom(a, end);
    const Side t = sideFrom(end, a);
    if (s.cell != kNoCell) cells_[s.cell].cut[s.k] = true;
    if (t.cell != kNoCell) cells_[t.cell].cut[t.k] = true;
    a = end;
  }
}

// True when the far point lies well inside the circle through the cell. Only the triangles' shape
// hangs on this, so doubles are good enough.
bool PlanTriangulation::wantsFlip(Side s) const {
  const Side t = twin(s);
  if (t.cell == kNoCell || cells_[s.cell].cut[s.k]) return false;
  const GridPoint& d = points_[cells_[t.cell].corners[before(t.k)]];
  double m[3][3];
  double size = 0;
  for (size_t i = 0; i < 3; ++i) {
    const GridPoint& p = points_[cells_[s.cell].corners[i]];
    m[i][0] = static_cast<double>(p.x - d.x);
    m[i][1] = static_cast<double>(p.y - d.y);
    m[i][2] = m[i][0] * m[i][0] + m[i][1] * m[i][1];
    size = std::max(size, m[i][2]);
  }
  const double in = m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) -
                    m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) +
                    m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  return in > 1e-9 * size * size && convex(s);
}

void PlanTriangulation::improve() {
  std::vector<Side> todo;
  for (std::uint32_t c = 0; c < cells_.size(); ++c) {
    for (std::uint32_t k = 0; k < 3; ++k) todo.push_back({c, k});
  }
  size_t flipsLeft = 100 * cells_.size();
  while (!todo.empty() && flipsLeft > 0) {
    const Side s = todo.back();
    todo.pop_back();
    if (!wantsFlip(s)) continue;
    const Side t = twin(s);
    flip(s);
    --flipsLeft;
    for (const std::uint32_t cell : {s.cell, t.cell}) {
      todo.push_back({cell, 0});
      todo.push_back({cell, 1});
    }
  }
}

}  // namespace model
