#include "model/lines/wall_runs.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>
#include <glm/trigonometric.hpp>

#include "model/lines/face_list.h"
#include "model/settingout/offsets.h"

namespace model {

namespace {

constexpr double kMeantParallel = 1.0;  // degrees; further apart walls are askew on purpose

struct Edge {
  Vec2 a{0, 0}, b{0, 0};
  std::string name;
};

// A wall's finished face as it is measured from.
struct Face {
  Vec2 start{0, 0}, end{0, 0}, along{1, 0}, outward{0, -1};
};

Face faceOf(const WallLine& wall, const Polygon& ring) {
  Face face;
  face.start = ring[wall.from];
  face.end = ring[wall.to];
  face.along = wall.along;
  face.outward = wall.outward;
  return face;
}

// What is on the dividing line itself belongs to both sides, whatever the last digits say.
constexpr double kOnLine = 1e-4;

// The part of an edge on which `measure`, linear along it, is not negative.
template <typename Measure>
std::optional<Edge> kept(Edge edge, const Measure& measure) {
  const double a = measure(edge.a), b = measure(edge.b);
  if (a < -kOnLine && b < -kOnLine) return std::nullopt;
  const Vec2 zero = edge.a + (edge.b - edge.a) * (a / (a - b));
  if (a < -kOnLine) edge.a = zero;
  if (b < -kOnLine) edge.b = zero;
  return edge;
}

std::optional<Edge> ahead(const Face& face, const Edge& edge) {
  return kept(edge, [&](const Vec2& p) { return glm::dot(p - face.start, face.outward); });
}

std::optional<Edge> straightAhead(const Face& face, const Edge& edge) {
  std::optional<Edge> part = ahead(face, edge);
  if (part) part = kept(*part, [&](const Vec2& p) { return glm::dot(p - face.start, face.along); });
  if (part) part = kept(*part, [&](const Vec2& p) { return glm::dot(face.end - p, face.along); });
  return part;
}

FaceDistance between(const Face& face, const Vec2& a, const Vec2& b, const Edge& edge) {
  const SiteOffset shortest = shortestBetween({a, b}, {edge.a, edge.b});
  return {glm::dot(shortest.from - face.start, face.along), shortest.from, shortest.at,
          shortest.distance};
}

// Where a line square to the wall from p meets the edge.
std::optional<double> squareTo(const Face& face, const Vec2& p, const Edge& edge) {
  const Vec2 u = edge.b - edge.a;
  const double denominator = cross(face.outward, u);
  if (std::abs(denominator) < 1e-12) return std::nullopt;
  const double away = cross(edge.a - p, u) / denominator;
  const double t = cross(edge.a - p, face.outward) / denominator;
  if (t < -1e-9 || t > 1 + 1e-9 || away < 0) return std::nullopt;
  return away;
}

template <typename Part>
std::optional<LineToSite> measure(const Face& face, const std::vector<Edge>& edges,
                                  const Part& partOf) {
  std::optional<LineToSite> found;
  const auto keep = [](FaceDistance& best, const FaceDistance& other) {
    if (other.distance < best.distance - 1e-9) best = other;
  };
  const auto keepSquare = [](std::optional<double>& best, const std::optional<double>& other) {
    if (other && (!best || *other < *best)) best = other;
  };
  for (const Edge& whole : edges) {
    const auto edge = partOf(face, whole);
    if (!edge) continue;
    if (!found) {
      found.emplace();
      for (FaceDistance* d : {&found->atStart, &found->atEnd, &found->nearest}) d->distance = 1e300;
    }
    const double before = found->nearest.distance;
    keep(found->atStart, between(face, face.start, face.start, *edge));
    keep(found->atEnd, between(face, face.end, face.end, *edge));
    keep(found->nearest, between(face, face.start, face.end, *edge));
    if (found->nearest.distance < before) found->to = edge->name;
    keepSquare(found->squareAtStart, squareTo(face, face.start, whole));
    keepSquare(found->squareAtEnd, squareTo(face, face.end, whole));
  }
  return found;
}

std::vector<Edge> edgesOf(const Outline& outline, const std::string& name, bool numbered) {
  std::vector<Edge> edges;
  for (size_t i = 0; i < outline.size(); ++i) {
    edges.push_back({outline[i], outline[(i + 1) % outline.size()],
                     numbered ? name + " " + std::to_string(i + 1) : name});
  }
  return edges;
}

double directionBetween(const WallLine& a, const WallLine& b) {
  return glm::degrees(std::abs(std::asin(std::clamp(cross(a.along, b.along), -1.0, 1.0))));
}

}  // namespace

std::optional<LineToSite> toBoundary(const Job& job, const SettingOut& settingOut, size_t wall,
                                     const Polygon& ring) {
  return measure(faceOf(settingOut.walls[wall], ring), edgesOf(job.site.boundary, "boundary", true),
                 straightAhead);
}

std::optional<LineToSite> toBuilding(const SettingOut& settingOut, size_t wall, const Polygon& ring,
                                     const StandingBuilding& building) {
  const std::string name = building.name.empty() ? "a standing building" : building.name;
  return measure(faceOf(settingOut.walls[wall], ring), edgesOf(building.outline, name, false),
                 ahead);
}

std::vector<SetOutLine> deriveWallRuns(const Job& job, const SettingOut& settingOut) {
  const Polygon ring = settingOut.ring(settingOut.faceDistances.finishedFace);
  std::vector<SetOutLine> lines;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    SetOutLine line;
    line.wall = i;
    line.length = settingOut.walls[i].length;
    line.boundary = toBoundary(job, settingOut, i, ring);
    for (const StandingBuilding& building : job.site.buildings) {
      if (building.kind == BuildingKind::Demolish) continue;
      auto found = toBuilding(settingOut, i, ring, building);
      if (found && (!line.building || found->nearest.distance < line.building->nearest.distance))
        line.building = std::move(found);
    }
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<ParallelGroup> deriveParallels(const SettingOut& settingOut) {
  const auto& walls = settingOut.walls;
  std::vector<size_t> order(walls.size());
  for (size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return walls[a].length > walls[b].length + 1e-6; });
  std::vector<bool> taken(walls.size(), false);
  std::vector<ParallelGroup> groups;
  for (size_t first : order) {
    if (taken[first]) continue;
    const WallLine& base = walls[first];
    ParallelGroup group;
    for (size_t other : order) {
      const double angle = directionBetween(base, walls[other]);
      if (taken[other] || angle > kMeantParallel) continue;
      taken[other] = true;
      group.parallel = group.parallel && angle <= kParallel;
      ParallelLine line;
      line.wall = other;
      line.near = -glm::dot(walls[other].start - base.start, base.outward);
      line.far = -glm::dot(walls[other].end - base.start, base.outward);
      if (glm::dot(walls[other].along, base.along) < 0) std::swap(line.near, line.far);
      group.lines.push_back(line);
    }
    std::stable_sort(group.lines.begin() + 1, group.lines.end(),
                     [](const ParallelLine& a, const ParallelLine& b) {
                       return std::abs(a.near) < std::abs(b.near) - 1e-6;
                     });
    if (group.lines.size() > 1) groups.push_back(std::move(group));
  }
  return groups;
}

}  // namespace model
