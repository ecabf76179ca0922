// Fascia boards along the eaves and barge boards up the gables: what the rafters' ends and the
// verges are closed with.
//
// All of them stand in the strip just outside the eaves outline, where nothing else is, parted on
// the corners' mitres: so they meet one another at the corners and overlap nothing.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/settingout/gable_edges.h"
#include "model/works/parts.h"
#include "model/works/roof_frame.h"

namespace model {
namespace {

constexpr double kThickness = 0.025;  // common practice, no source
constexpr double kThinnest = 0.006;

// The eaves outline moved out by the boards' thickness; fascia boards end square at parapets. Where
// two eaves come so close that boards would meet face to face, thinner ones are used; none when
// there is room for none.
Polygon outsideOf(const Job& job, const SettingOut& settingOut) {
  for (double thickness = kThickness; thickness >= kThinnest; thickness /= 2) {
    std::vector<double> inward;
    for (size_t wall = 0; wall < settingOut.walls.size(); ++wall)
      inward.push_back(parapetOn(job, settingOut, wall) ? 0 : -thickness);
    Polygon outside = offsetMitred(settingOut.eavesOutline, inward);
    if (!crossingEdges(outside)) return outside;
  }
  return {};
}

// A length of one edge of the roof's outline: its ends on the outline and on the outside.
struct Length {
  Vec2 from{0, 0}, to{0, 0}, outsideFrom{0, 0}, outsideTo{0, 0};
};

// Point `p` of the edge carried out: on the mitre at the edge's ends, square between them.
Vec2 carriedOut(const Length& edge, const Vec2& p) {
  if (glm::length(p - edge.from) < 1e-6) return edge.outsideFrom;
  if (glm::length(p - edge.to) < 1e-6) return edge.outsideTo;
  const Vec2 along = glm::normalize(edge.outsideTo - edge.outsideFrom);
  return edge.outsideFrom + along * glm::dot(p - edge.outsideFrom, along);
}

class Boards {
 public:
  Boards(const Job& job, const SettingOut& settingOut)
      : job_(job), settingOut_(settingOut), outside_(outsideOf(job, settingOut)) {}

  std::vector<Element> all() const {
    std::vector<Element> boards;
    if (outside_.empty()) return boards;
    const std::vector<RoofFace>& faces = settingOut_.roof.faces;
    for (size_t f = 0; f < faces.size(); ++f) boards.push_back(fascia(f));
    for (size_t wall = 0; wall < settingOut_.walls.size(); ++wall)
      if (settingOut_.walls[wall].eaves == EavesKind::Gable && !parapetOn(job_, settingOut_, wall))
        addBarges(wall, boards);
    for (size_t i = 0; i < boards.size(); ++i)
      boards[i].placed = whole({StageKind::Fascia}, double(i) / double(boards.size()));
    return boards;
  }

 private:
  Length edgeOf(const WallLine& wall) const {
    const Polygon& eaves = settingOut_.eavesOutline;
    return {eaves[wall.from], eaves[wall.to], outside_[wall.from], outside_[wall.to]};
  }

  Element board(const WallLine& wall, ElementKind kind, const Length& length, const Plane& under,
                const Plane& over) const {
    Element element;
    element.kind = kind;
    element.material = Material::Timber;
    element.wall = wall.name;
    const Region plan{{length.from, length.outsideFrom, length.outsideTo, length.to}, {}};
    element.solid = prism(plan, under, over);
    const Vec2 run = length.outsideTo - length.outsideFrom;
    element.quantity = {std::hypot(glm::length(run), glm::dot(under.slope, run)), Unit::Metre};
    return element;
  }

  // Plumb, from the rafters' underside to the covering's at its lower edge.
  Element fascia(size_t face) const {
    const WallLine& wall = settingOut_.walls[settingOut_.roof.faces[face].edge];
    const Length edge = edgeOf(wall);
    Element element = board(wall, ElementKind::FasciaBoard, edge,
                            Plane::flat(settingOut_.rafterUnderside(face).at(edge.from)),
                            Plane::flat(rafterTop(job_, settingOut_, face).at(edge.from)));
    element.id = "wall " + wall.name + "/fascia board";
    element.name = "Fascia board on " + wall.name;
    return element;
  }

  // One for each slope that ends at the gable, cut plumb where it meets the next.
  void addBarges(size_t index, std::vector<Element>& boards) const {
    const WallLine& wall = settingOut_.walls[index];
    const Length edge = edgeOf(wall);
    const std::vector<SlopeEnd> slopes = slopeEndsAt(settingOut_, index);
    for (size_t i = 0; i < slopes.size(); ++i) {
      const Length length{slopes[i].a, slopes[i].b, carriedOut(edge, slopes[i].a),
                          carriedOut(edge, slopes[i].b)};
      const size_t face = slopes[i].face;
      Element element =
          board(wall, ElementKind::BargeBoard, length, settingOut_.rafterUnderside(face),
                rafterTop(job_, settingOut_, face));
      const std::string number = std::to_string(i + 1);
      element.id = "wall " + wall.name + "/barge board/" + number;
      element.name = "Barge board " + number + " on " + wall.name;
      boards.push_back(std::move(element));
    }
  }

  const Job& job_;
  const SettingOut& settingOut_;
  Polygon outside_;
};

}  // namespace

void buildFasciaBoards(const Job& job, const SettingOut& settingOut, Works& works) {
  for (Element& board : Boards(job, settingOut).all()) add(works, std::move(board));
}

}  // namespace model
