#include "model/works/stepped_prism.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

#include <glm/geometric.hpp>

namespace model {

namespace {

constexpr double kSame = 1e-6;    // metres
constexpr double kSliver = 2e-5;  // a cut that leaves less is not made

// Points of the plan, each with the levels that are used over it.
class Skin {
 public:
  explicit Skin(const std::vector<PrismPiece>& pieces) {
    for (const PrismPiece& piece : pieces) {
      Footing footing;
      for (const Vec2& p : piece.plan) {
        const std::uint32_t at = pointAt(p);
        const bool doubled = !footing.points.empty() &&
                             (footing.points.back() == at || footing.points.front() == at);
        if (doubled) continue;
        footing.points.push_back(at);
        footing.plan.push_back(p);
        footing.bottom.push_back(levelAt(at, piece.bottom.at(p)));
        footing.top.push_back(levelAt(at, piece.top.at(p)));
      }
      if (footing.points.size() > 2) footings_.push_back(std::move(footing));
    }
    for (std::vector<Level>& levels : levels_) {
      std::sort(levels.begin(), levels.end(),
                [](const Level& a, const Level& b) { return a.z < b.z; });
    }
  }

  Solid solid() {
    for (const Footing& footing : footings_) {
      caps(footing);
      for (size_t k = 0; k < footing.points.size(); ++k) side(footing, k);
    }
    return std::move(solid_);
  }

 private:
  struct Level {
    double z = 0;
    std::uint32_t vertex = 0;
  };
  // A piece, its corners as numbers of plan points and of vertices.
  struct Footing {
    std::vector<std::uint32_t> points, bottom, top;
    Polygon plan;
  };

  std::uint32_t pointAt(const Vec2& p) {
    for (size_t i = 0; i < plan_.size(); ++i) {
      if (glm::distance(plan_[i], p) < kSame) return static_cast<std::uint32_t>(i);
    }
    plan_.push_back(p);
    levels_.emplace_back();
    return static_cast<std::uint32_t>(plan_.size() - 1);
  }

  std::uint32_t levelAt(std::uint32_t point, double z) {
    for (const Level& level : levels_[point]) {
      if (std::fabs(level.z - z) < kSame) return level.vertex;
    }
    const auto vertex = static_cast<std::uint32_t>(solid_.points.size());
    solid_.points.emplace_back(plan_[point].x, plan_[point].y, z);
    levels_[point].push_back({z, vertex});
    return vertex;
  }

  void triangle(std::uint32_t a, std::uint32_t b, std::uint32_t c) {
    if (a != b && b != c && c != a) solid_.triangles.push_back({a, b, c});
  }

  void caps(const Footing& footing) {
    for (const auto& [a, b, c] : triangulate(Region{footing.plan, {}})) {
      triangle(footing.top[a], footing.top[b], footing.top[c]);
      triangle(footing.bottom[a], footing.bottom[c], footing.bottom[b]);
    }
  }

  // The vertices over a point from one to another, lowest first.
  std::vector<std::uint32_t> chain(std::uint32_t point, std::uint32_t from,
                                   std::uint32_t to) const {
    const double low = solid_.points[from].z, high = solid_.points[to].z;
    std::vector<std::uint32_t> vertices;
    for (const Level& level : levels_[point]) {
      if (level.z >= low && level.z <= high) vertices.push_back(level.vertex);
    }
    return vertices;
  }

  // The piece on the other side of the edge from u to v: its corner at v.
  std::optional<std::pair<const Footing*, size_t>> beyond(std::uint32_t u, std::uint32_t v) const {
    for (const Footing& footing : footings_) {
      const size_t n = footing.points.size();
      for (size_t k = 0; k < n; ++k) {
        if (footing.points[k] == v && footing.points[(k + 1) % n] == u) return {{&footing, k}};
      }
    }
    return std::nullopt;
  }

  void side(const Footing& footing, size_t k) {
    const size_t next = (k + 1) % footing.points.size();
    const std::uint32_t u = footing.points[k], v = footing.points[next];
    std::uint32_t highU = footing.top[k], highV = footing.top[next];
    if (const auto other = beyond(u, v)) {
      const auto& [neighbour, atV] = *other;
      highV = neighbour->bottom[atV];
      highU = neighbour->bottom[(atV + 1) % neighbour->points.size()];
      // The one that reaches lower shows its side.
      const double ours =
          solid_.points[footing.bottom[k]].z + solid_.points[footing.bottom[next]].z;
      if (ours >= solid_.points[highU].z + solid_.points[highV].z) return;
    }
    // Zipped up between the two upright lines, so that no triangle lies along one.
    const auto atU = chain(u, footing.bottom[k], highU),
               atV = chain(v, footing.bottom[next], highV);
    size_t i = 0, j = 0;
    while (i + 1 < atU.size() || j + 1 < atV.size()) {
      const bool up =
          j + 1 >= atV.size() ||
          (i + 1 < atU.size() && solid_.points[atU[i + 1]].z <= solid_.points[atV[j + 1]].z);
      if (up) {
        triangle(atU[i], atV[j], atU[i + 1]);
        ++i;
      } else {
        triangle(atU[i], atV[j], atV[j + 1]);
        ++j;
      }
    }
  }

  std::vector<Vec2> plan_;
  std::vector<std::vector<Level>> levels_;
  std::vector<Footing> footings_;
  Solid solid_;
};

}  // namespace

Solid steppedPrism(const std::vector<PrismPiece>& pieces) { return Skin(pieces).solid(); }

CutPiece cutWhere(const Polygon& plan, const Plane& distance, double at) {
  double low = 1e300, high = -1e300;
  for (const Vec2& p : plan) {
    low = std::min(low, distance.at(p) - at);
    high = std::max(high, distance.at(p) - at);
  }
  if (low > -kSliver) return {{}, plan};
  if (high < kSliver) return {plan, {}};
  CutPiece cut;
  for (size_t i = 0; i < plan.size(); ++i) {
    const Vec2 &a = plan[i], &b = plan[(i + 1) % plan.size()];
    const double da = distance.at(a) - at, db = distance.at(b) - at;
    if (da <= kSame) cut.before.push_back(a);
    if (da >= -kSame) cut.after.push_back(a);
    const bool crosses = (da < -kSame && db > kSame) || (da > kSame && db < -kSame);
    if (!crosses) continue;
    const Vec2 on = a + (b - a) * (da / (da - db));
    cut.before.push_back(on);
    cut.after.push_back(on);
  }
  return cut;
}

}  // namespace model
