// Cellar walls of blocks: day by day the corners and then the runs between them, and the concrete
// that goes between two leaves once they have hardened. The concrete in the cores of hollow blocks
// is inside their units: it has no solid of its own and is counted by its share.
#include "model/walls/wall_names.h"
#include "model/works/cellar_leaves.h"
#include "model/works/leaf_parts.h"
#include "model/works/parts.h"
#include "model/works/racking.h"

namespace model {

namespace {

constexpr double kCorners = 0.4;  // of a day, until the corners are up: common practice, no source

class CellarBuilder {
 public:
  CellarBuilder(const Job& job, const SettingOut& out, Works& works)
      : job_(job), cellar_(cellarLeaves(job, out)), works_(works) {
    // The leaves of a filled cavity are what forms would be.
    stage_ = {job.cellar->kind == CellarWallKind::FilledCavity ? StageKind::CellarForms
                                                               : StageKind::CellarWalls};
  }

  void build() {
    for (size_t leaf = 0; leaf < cellar_.leaves.size(); ++leaf)
      for (size_t wall = 0; wall < cellar_.ring.walls.size(); ++wall) buildLeaf(wall, leaf);
    if (cellar_.leaves.size() == 2) fill();
  }

 private:
  Element started(size_t wall, size_t leaf, size_t rise, const std::string& part) const {
    const std::string& line = cellar_.ring.walls[wall].name;
    const std::string& name = cellar_.leaves[leaf].name;
    const std::string day = "day " + std::to_string(rise + 1);
    Element e;
    e.id = "cellar/" + line + "/" + name + "/" + day + "/" + part;
    e.name = "Cellar wall " + line + ", " + name + ", " + day + ", " + part;
    e.kind = ElementKind::CellarWall;
    e.material = Material::Block;
    return e;
  }

  void buildLeaf(size_t wall, size_t leaf) {
    const WallLayer layer = cellar_.layer(wall, leaf);
    const WallLine& line = cellar_.ring.walls[wall];
    LeafParts parts(cellar_.laid(job_.walls, wall, leaf), layer, works_);
    const std::vector<CellarRise> rises = cellarRises(job_, cellar_);
    const double each = 1.0 / static_cast<double>(rises.size());
    for (size_t i = 0; i < rises.size(); ++i) {
      const CellarRise& rise = rises[i];
      const double begin = static_cast<double>(i) * each;
      const std::string cut =
          i + 1 < rises.size() ? "" : topCourseWords(job_.walls, cellar_.height());
      const auto put = [&](const std::string& part, const Regions& elevation, double from,
                           double to, const std::vector<Rect>& held, bool forth) {
        Element e = started(wall, leaf, i, part);
        e.name += cut;
        e.solid = layer.solid(elevation);
        e.quantity = {volume(e.solid) / layer.thickness(), Unit::SquareMetre};
        e.placed = upward(stage_, rise.bottom, rise.top, begin + from * each, begin + to * each);
        parts.add(std::move(e), unitsIn(held), forth);
      };
      std::vector<Rect> corners;
      for (const bool atStart : {true, false}) {
        const auto corner =
            rackedCorner(parts.laid(), layer, atStart, layer.to - layer.from, rise.bottom, rise.top,
                         job_.walls.blockLength + job_.walls.joint);
        put("corner " + cellar_.ring.corners[atStart ? line.from : line.to].letter,
            fromRectangles(corner, {}), 0, kCorners, parts.openEnded(corner, atStart), atStart);
        corners.insert(corners.end(), corner.begin(), corner.end());
      }
      const std::vector<Rect> run{{layer.from, rise.bottom, layer.to, rise.top}};
      put("between the corners", fromRectangles(run, corners), kCorners, 1,
          parts.openEnded(run, true, true), true);
    }
  }

  void fill() {
    const Polygon face = [&] {
      Polygon points;
      for (const Corner& corner : cellar_.ring.corners) points.push_back(corner.at);
      return points;
    }();
    const Region core = ring(offsetMitred(face, cellar_.leaves.front().inner),
                             offsetMitred(face, cellar_.leaves.back().outer));
    const std::vector<CellarRise> lifts = cellarFillLifts(job_, cellar_);
    const double each = 1.0 / static_cast<double>(lifts.size());
    for (size_t i = 0; i < lifts.size(); ++i) {
      const std::string lift = "lift " + std::to_string(i + 1);
      Element e;
      e.id = "cellar/core/" + lift;
      e.name = "Cellar walls, concrete between the leaves, " + lift;
      e.kind = ElementKind::Core;
      e.material = Material::Concrete;
      e.solid = prism(core, lifts[i].bottom, lifts[i].top);
      e.quantity = {volume(e.solid), Unit::CubicMetre};
      e.placed = upward({StageKind::CellarWalls}, lifts[i].bottom, lifts[i].top,
                        static_cast<double>(i) * each, static_cast<double>(i + 1) * each);
      add(works_, std::move(e));
    }
  }

  const Job& job_;
  const CellarLeaves cellar_;
  Works& works_;
  StageKey stage_;
};

}  // namespace

void buildCellarWalls(const Job& job, const SettingOut& settingOut, Works& works) {
  if (job.cellar) CellarBuilder(job, settingOut, works).build();
}

}  // namespace model
