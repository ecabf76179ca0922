// Upper floors: joists over the shorter span from inner face to inner face, and the deck on them.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/works/parts.h"

namespace model {

namespace {

constexpr double kClearOfWall = 0.050;  // first joist from the wall; common practice, no source
constexpr double kClearOfRoof = 0.010;
constexpr double kLeastPart = 0.6;    // of a joist's width, to be worth laying
constexpr double kJoistsShare = 0.7;  // of the stage; the deck has the rest

struct Span {
  double low = 1e300, high = -1e300;
};

Span spanAlong(const Polygon& polygon, const Vec2& direction) {
  Span span;
  for (const Vec2& p : polygon) {
    span.low = std::min(span.low, glm::dot(p, direction));
    span.high = std::max(span.high, glm::dot(p, direction));
  }
  return span;
}

// The inner faces, moved in under the roof where the floor is high in it; empty when no room is
// left.
Polygon floorArea(const SettingOut& out, double top) {
  std::vector<double> inward;
  for (const WallLine& wall : out.walls) {
    double distance = out.faceDistances.innerFace;
    if (wall.eaves == EavesKind::Hip && out.tanPitch > 0)
      distance =
          std::max(distance, (top + kClearOfRoof - out.levels.eavesUnderside) / out.tanPitch);
    inward.push_back(distance);
  }
  const Polygon area = offsetMitred(out.outline, inward);
  if (signedArea(area) <= 0 || crossingEdges(area)) return {};
  return area;
}

// Square to the joists: along the longer side of the floor.
Vec2 acrossJoists(const SettingOut& out, const Polygon& area) {
  size_t longest = 0;
  for (size_t i = 0; i < out.walls.size(); ++i) {
    if (out.walls[i].length > out.walls[longest].length + 1e-9) longest = i;
  }
  const Vec2 u = out.walls[longest].along, v{-u.y, u.x};
  const Span along = spanAlong(area, u), square = spanAlong(area, v);
  return along.high - along.low >= square.high - square.low - 1e-9 ? u : v;
}

std::vector<double> joistLines(const Span& span, const UpperFloor& floor) {
  const double first = span.low + kClearOfWall + floor.joistWidth / 2;
  const double last = span.high - kClearOfWall - floor.joistWidth / 2;
  std::vector<double> lines;
  if (last < first) return lines;
  const double spacing = std::max(floor.spacing, floor.joistWidth * 2);
  for (int i = 0; first + i * spacing <= last + 1e-9; ++i) lines.push_back(first + i * spacing);
  if (last - lines.back() > floor.joistWidth + kClearOfWall) lines.push_back(last);
  return lines;
}

class FloorBuilder {
 public:
  FloorBuilder(const Job& job, const SettingOut& out, size_t storey, Works& works)
      : job_(job), out_(out), storey_(storey), works_(works) {}

  void build() {
    const double top = out_.levels.structuralFloor[storey_];
    const Polygon area = floorArea(out_, top);
    if (area.empty()) return;
    id_ = "floor/" + job_.storeys[storey_].name;
    joists(area);
    Element deck;
    deck.id = id_ + "/deck";
    deck.name = job_.storeys[storey_].name + ", deck";
    deck.kind = ElementKind::Deck;
    deck.material = Material::Plywood;
    deck.solid = prism(Region{area, {}}, top - job_.upperFloor.deck, top);
    deck.quantity = {signedArea(area), Unit::SquareMetre};
    const Span span = spanAlong(area, {1, 0});
    deck.placed = Placement{{StageKind::UpperFloor, static_cast<int>(storey_)},
                            kJoistsShare,
                            1,
                            {1, 0, 0},
                            span.low,
                            span.high};
    add(works_, std::move(deck));
  }

 private:
  void joists(const Polygon& area) {
    const Vec2 u = acrossJoists(out_, area), v{-u.y, u.x};
    const Span length = spanAlong(area, v);
    const auto lines = joistLines(spanAlong(area, u), job_.upperFloor);
    int number = 0;
    for (size_t i = 0; i < lines.size(); ++i) {
      const double half = job_.upperFloor.joistWidth / 2;
      const auto at = [&](double along, double square) { return u * along + v * square; };
      const Polygon strip{at(lines[i] - half, length.low - 1), at(lines[i] + half, length.low - 1),
                          at(lines[i] + half, length.high + 1),
                          at(lines[i] - half, length.high + 1)};
      const double begin =
          kJoistsShare * static_cast<double>(i) / static_cast<double>(lines.size());
      for (const Region& piece : intersect({{strip, {}}}, {{area, {}}})) {
        const Span span = spanAlong(piece.outer, v);
        const double run = span.high - span.low;
        if (model::area(piece) < kLeastPart * run * job_.upperFloor.joistWidth) continue;
        joist(piece, run, ++number, begin);
      }
    }
  }

  void joist(const Region& piece, double length, int number, double begin) {
    Element element;
    element.id = id_ + "/joist " + std::to_string(number);
    element.name = job_.storeys[storey_].name + ", joist " + std::to_string(number);
    element.kind = ElementKind::Joist;
    element.material = Material::Timber;
    const double bottom = out_.levels.joistBearing[storey_];
    element.solid = prism(piece, bottom, bottom + job_.upperFloor.joistDepth);
    element.quantity = {length, Unit::Metre};
    element.placed = whole({StageKind::UpperFloor, static_cast<int>(storey_)}, begin);
    add(works_, std::move(element));
  }

  const Job& job_;
  const SettingOut& out_;
  size_t storey_;
  Works& works_;
  std::string id_;
};

}  // namespace

void buildUpperFloors(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t storey = 1; storey < job.storeys.size(); ++storey) {
    FloorBuilder(job, settingOut, storey, works).build();
  }
}

}  // namespace model
