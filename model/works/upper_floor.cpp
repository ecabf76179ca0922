// Upper floors: joists over the shorter span from inner face to inner face, trimmed round the wells
// of stairs, and the deck on them.
#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include <glm/geometric.hpp>

#include "model/works/parts.h"
#include "model/works/stair_well.h"
#include "model/works/trimming.h"

namespace model {

namespace {

constexpr double kClearOfWall = 0.050;  // first joist from the wall; common practice, no source
constexpr double kClearOfRoof = 0.010;
constexpr double kLeastPart = 0.6;    // of a joist's width, to be worth laying
constexpr double kJoistsShare = 0.7;  // of the stage; the deck has the rest

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
    Regions decked{{area, {}}};
    for (const StairFlight* flight : flightsTo(out_, storey_))
      decked = subtract(decked, {{wellCut(job_, out_, *flight), {}}});
    deck.solid = prism(decked, top - job_.upperFloor.deck, top);
    deck.quantity = {model::area(decked), Unit::SquareMetre};
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
  // What is laid along one line.
  struct Line {
    Regions pieces;
    Vec2 way{1, 0};  // along it
    const char* what = "joist";
  };

  void joists(const Polygon& area) {
    const Vec2 u = acrossJoists(out_, area), v{-u.y, u.x};
    std::vector<Trimming> wells;
    for (const StairFlight* flight : flightsTo(out_, storey_))
      wells.push_back(trimmingOf(area, *flight, u, v));
    std::vector<double> at = joistLines(spanAlong(area, u), job_.upperFloor);
    for (const Trimming& well : wells) keepSpacing(at, well);
    std::vector<Line> first, trimmers, cut;
    for (const double line : at) {
      const Regions whole = intersect({{strip(u, v, line, area), {}}}, {{area, {}}});
      Regions left = whole;
      for (const Trimming& well : wells)
        left = well.without(left, line, job_.upperFloor.joistWidth);
      const bool meets = model::area(left) < model::area(whole) - 1e-9;
      (meets ? cut : first).push_back({left, v, "joist"});
    }
    for (const Trimming& well : wells) {
      for (const Regions& piece : well.joists) first.push_back({piece, v, "trimming joist"});
      for (const Regions& piece : well.trimmers) trimmers.push_back({piece, u, "trimmer"});
    }
    first.insert(first.end(), trimmers.begin(), trimmers.end());
    first.insert(first.end(), cut.begin(), cut.end());
    for (size_t i = 0; i < first.size(); ++i)
      lay(first[i], kJoistsShare * static_cast<double>(i) / static_cast<double>(first.size()));
  }

  Polygon strip(const Vec2& u, const Vec2& v, double line, const Polygon& area) const {
    const double half = job_.upperFloor.joistWidth / 2;
    const Span length = spanAlong(area, v);
    return boxOnPlan(u, v, {line - half, line + half}, {length.low - 1, length.high + 1});
  }

  void lay(const Line& line, double begin) {
    for (const Region& piece : line.pieces) {
      const Span span = spanAlong(piece.outer, line.way);
      const double run = span.high - span.low;
      if (model::area(piece) < kLeastPart * run * job_.upperFloor.joistWidth) continue;
      joist(piece, run, line.what, begin);
    }
  }

  Trimming trimmingOf(const Polygon& area, const StairFlight& flight, const Vec2& u,
                      const Vec2& v) const {
    return Trimming(job_.upperFloor, area, wellCut(job_, out_, flight), u, v,
                    job_.stairs[flight.jobIndex].trimming == TrimmingKind::Double ? 2 : 1);
  }

  // Where trimming joists take the place of others the next are not to lie further away.
  void keepSpacing(std::vector<double>& lines, const Trimming& well) const {
    for (const double more : well.between(lines, job_.upperFloor))
      lines.insert(std::lower_bound(lines.begin(), lines.end(), more), more);
  }

  void joist(const Region& piece, double length, const std::string& what, double begin) {
    const std::string numbered = what + " " + std::to_string(++numbers_[what]);
    Element element;
    element.id = id_ + "/" + numbered;
    element.name = job_.storeys[storey_].name + ", " + numbered;
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
  std::map<std::string, int> numbers_;  // of each kind of timber, as they are laid
};

}  // namespace

void buildUpperFloors(const Job& job, const SettingOut& settingOut, Works& works) {
  for (size_t storey = 1; storey < job.storeys.size(); ++storey) {
    FloorBuilder(job, settingOut, storey, works).build();
  }
}

}  // namespace model
