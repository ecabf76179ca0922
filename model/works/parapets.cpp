// What makes a parapet of a gable that goes up past the roof: brickwork that returns round its ends
// and closes the cavity there, the damp course over both leaves, a kneeler on each level end, and
// the coping up the slopes.
#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/bond/corbel_course.h"
#include "model/bond/laid_leaf.h"
#include "model/walls/gable_profile.h"
#include "model/walls/parapet_line.h"
#include "model/walls/wall_names.h"
#include "model/works/coping_stones.h"
#include "model/works/gable_rise.h"
#include "model/works/parts.h"
#include "model/works/stepped_prism.h"

namespace model {

namespace {

// Of the stage of the gables, when the brickwork is up.
constexpr double kSheetLaid = 0.86, kKneelersLaid = 0.88, kCopingBegun = 0.90;
constexpr double kLeastUnit = 0.020;  // metres: less is made up in mortar

class ParapetBuilder {
 public:
  ParapetBuilder(const Job& job, const SettingOut& settingOut, size_t wall, Works& works)
      : job_(job),
        out_(settingOut),
        wall_(wall),
        line_(settingOut.walls[wall]),
        top_(parapetLine(job, settingOut, wall)),
        works_(works) {}

  void build(const LeafBonds& bonds) {
    const LeafPlan plan = leafPlan(job_, out_, wall_, LeafSide::Outer);
    const LaidLeaf leaf = layLeaf(job_, out_, bonds, plan);
    for (const bool atStart : {true, false}) buildEnd(leaf, atStart);
    const double coping = parapetOn(job_, out_, wall_)->coping;
    if (coping <= 0) return;
    buildDampCourse();
    plumb_ = coping * std::sqrt(1 + out_.tanPitch * out_.tanPitch);
    for (const bool atStart : {true, false}) buildKneeler(atStart);
    int number = 0;
    for (size_t i = 1; i + 2 < top_.size(); ++i) buildCoping(++number, top_[i], top_[i + 1]);
  }

 private:
  Element started(const std::string& part, const std::string& name, ElementKind kind,
                  Material material) const {
    Element e;
    e.id = layerId(line_, "parapet") + "/" + part;
    e.name = layerName(line_, "parapet") + ", " + name;
    e.kind = kind;
    e.material = material;
    e.wall = line_.name;
    return e;
  }

  std::string corner(bool atStart) const {
    return out_.corners[atStart ? line_.from : line_.to].letter;
  }

  // The wall from face to face and `beyond` on both sides, square at its ends.
  WallLayer across(double beyond) const {
    return squared(layerOf(out_, wall_, -beyond, out_.faceDistances.innerFace + beyond));
  }

  // ---- the ends ------------------------------------------------------------------

  // From the outer leaf at the eaves up: behind the parapet's own outer leaf the next wall's goes
  // on, and inside that brickwork closes the corner over the plate.
  void buildEnd(const LaidLeaf& leaf, bool atStart) {
    const FaceDistances& faces = out_.faceDistances;
    const double outer = faces.outerLeafBack, inner = faces.innerLeafFront, back = faces.innerFace;
    const double foot = out_.levels.outerLeafTop, plate = out_.levels.plateTop;
    const double head = top_[atStart ? 0 : top_.size() - 1].y;
    const auto plan = [&](const std::vector<Vec2>& places) {
      Polygon polygon;
      for (const Vec2& p : places)
        polygon.push_back(line_.at(atStart ? p.x : line_.length - p.x, p.y));
      if (!atStart) std::reverse(polygon.begin(), polygon.end());
      return polygon;
    };
    const Plane low = Plane::flat(foot), over = Plane::flat(plate), high = Plane::flat(head);
    Element e = started("end " + corner(atStart), "end at corner " + corner(atStart),
                        ElementKind::OuterLeaf, Material::Brick);
    e.solid = steppedPrism({
        {plan({{0, outer}, {outer, outer}, {outer, inner}, {0, inner}}), low, high},
        {plan({{0, inner}, {outer, inner}, {outer, back}, {0, back}}), low, high},
        {plan({{outer, inner}, {inner, inner}, {back, back}, {outer, back}}), over, high},
    });
    e.quantity = {volume(e.solid) / job_.walls.outerLeaf, Unit::SquareMetre};
    e.placed = gableRise(job_, out_);
    e.frame = works_.frames.size();
    works_.frames.push_back(endFrame(atStart));
    e.firstUnit = works_.units.size();
    for (size_t band = 0; band < leaf.bands.size(); ++band) {
      const CourseBand& course = leaf.bands[band];
      if (course.bottom < foot - 1e-6 || course.bottom > head - 1e-6) continue;
      layEnd(course, runsThrough(leaf, band, atStart), head, atStart, e.placed);
    }
    e.unitCount = works_.units.size() - e.firstUnit;
    add(works_, std::move(e));
  }

  // Along the next wall, as its own leaf has it.
  UnitFrame endFrame(bool atStart) const {
    UnitFrame frame;
    frame.start = atStart ? line_.start : line_.end;
    frame.along = atStart ? line_.outward : -line_.outward;
    frame.inward = atStart ? line_.along : -line_.along;
    return frame;
  }

  // Where the gable's own course stops short of the corner, the return's goes through it.
  bool runsThrough(const LaidLeaf& leaf, size_t band, bool atStart) const {
    double nearest = line_.length;
    for (size_t i = leaf.firstOf[band]; i < leaf.firstOf[band + 1]; ++i) {
      const MasonryUnit& u = leaf.units[i];
      nearest = std::min(nearest, atStart ? u.s0 : line_.length - u.s1);
    }
    return nearest > out_.faceDistances.outerLeafBack / 2;
  }

  void layEnd(const CourseBand& course, bool through, double head, bool atStart,
              const Placement& placed) {
    const FaceDistances& faces = out_.faceDistances;
    const double joint = job_.walls.joint;
    SolidSizes sizes;
    sizes.brick = job_.walls.brickLength;
    sizes.joint = joint;
    const double top = std::min(course.top, head);
    std::vector<MasonryUnit> units;
    // `s` along the end, from the gable's outer face in; `d` from the next wall's outer face in.
    const auto put = [&](double s0, double s1, double d0, double d1, double bottom, Piece piece) {
      MasonryUnit unit;
      unit.s0 = atStart ? -s1 : s0;
      unit.s1 = atStart ? -s0 : s1;
      unit.d0 = static_cast<float>(d0);
      unit.d1 = static_cast<float>(d1);
      unit.z0 = bottom + joint;
      unit.z1 = top;
      unit.course = static_cast<std::int16_t>(course.number);
      unit.header = d1 - d0 > s1 - s0;
      unit.piece = unit.height() < job_.walls.brickHeight - 0.003 ? Piece::Split : piece;
      if (unit.height() >= kLeastUnit && s1 - s0 >= kLeastUnit && d1 - d0 >= kLeastUnit)
        units.push_back(unit);
    };
    const double from = through ? 0 : faces.outerLeafBack + joint;
    for (const SolidPiece& p :
         layCorbelCourse(sizes, faces.outerLeafBack, faces.innerFace - from, false))
      put(from + p.d0, from + p.d1, p.s0, p.s1, course.bottom, p.piece);
    put(faces.innerLeafFront, faces.innerFace, faces.outerLeafBack + joint,
        faces.innerLeafFront - joint, std::max(course.bottom, out_.levels.plateTop), Piece::Cut);
    const auto share = [&](double z) {
      return std::clamp((z - placed.low) / (placed.high - placed.low), 0.0, 1.0);
    };
    for (size_t k = 0; k < units.size(); ++k) {
      const double done = (static_cast<double>(k) + 0.5) / static_cast<double>(units.size());
      units[k].when = static_cast<float>(share(course.bottom) +
                                         (share(course.top) - share(course.bottom)) * done);
      works_.units.push_back(units[k]);
    }
  }

  // ---- on top --------------------------------------------------------------------

  void buildDampCourse() {
    Region strip;
    strip.outer = top_;
    for (size_t i = top_.size(); i-- > 0;)
      strip.outer.push_back(top_[i] + Vec2{0, kDampCourseThickness});
    Element e = started("damp course", "damp course under the coping", ElementKind::DampCourse,
                        Material::Membrane);
    e.solid = across(0).solid({strip});
    double length = 0;
    for (size_t i = 0; i + 1 < top_.size(); ++i) length += glm::distance(top_[i], top_[i + 1]);
    e.quantity = {length, Unit::Metre};
    e.placed = whole({StageKind::Gables}, kSheetLaid);
    add(works_, std::move(e));
  }

  void buildKneeler(bool atStart) {
    const Vec2 bed = top_[atStart ? 1 : top_.size() - 2] + Vec2{0, kDampCourseThickness};
    const double from = atStart ? -kCopingOut : bed.x;
    const double to = atStart ? bed.x : line_.length + kCopingOut;
    Element e = started("kneeler " + corner(atStart), "kneeler at corner " + corner(atStart),
                        ElementKind::Coping, Material::Concrete);
    across(kCopingOut).addBox({from, bed.y, to, bed.y + plumb_}, e.solid);
    e.quantity = {1, Unit::Each};
    e.placed = whole({StageKind::Gables}, kKneelersLaid);
    add(works_, std::move(e));
  }

  // One length of the line, stone by stone from its foot; plumb where it meets the next.
  void buildCoping(int number, const Vec2& a, const Vec2& b) {
    const double length = glm::distance(a, b), run = b.x - a.x;
    const int stones = std::max(
        1, static_cast<int>(
               std::ceil((length + kCopingJoint) / (kCopingLength + kCopingJoint) - 1e-6)));
    const double joint = kCopingJoint * run / length, each = (run + joint) / stones;
    const WallLayer layer = across(kCopingOut);
    const std::string text = std::to_string(number);
    Element e =
        started("coping " + text, "coping " + text, ElementKind::Coping, Material::Concrete);
    for (int k = 0; k < stones; ++k) {
      const double s0 = a.x + k * each, s1 = k + 1 == stones ? b.x : s0 + each - joint;
      const auto bed = [&](double s) {
        return Vec2{s, a.y + (b.y - a.y) * (s - a.x) / run + kDampCourseThickness};
      };
      const Vec2 up{0, plumb_};
      e.solid.append(layer.solid({Region{{bed(s0), bed(s1), bed(s1) + up, bed(s0) + up}, {}}}));
    }
    e.quantity = {length, Unit::Metre};
    const bool rises = b.y >= a.y;
    Placement placed = whole({StageKind::Gables}, kCopingBegun);
    placed.end = 1;
    placed.direction = {line_.along.x * (rises ? 1 : -1), line_.along.y * (rises ? 1 : -1), 0};
    placed.low = 1e300;
    placed.high = -1e300;
    for (const Vec3& p : e.solid.points) {
      const double s = glm::dot(placed.direction, p);
      placed.low = std::min(placed.low, s);
      placed.high = std::max(placed.high, s);
    }
    e.placed = placed;
    add(works_, std::move(e));
  }

  const Job& job_;
  const SettingOut& out_;
  const size_t wall_;
  const WallLine& line_;
  const std::vector<Vec2> top_;
  Works& works_;
  double plumb_ = 0;  // thickness of the coping, plumb
};

}  // namespace

void buildParapets(const Job& job, const SettingOut& settingOut, Works& works) {
  std::vector<size_t> walls;
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall)
    if (parapetOn(job, settingOut, wall)) walls.push_back(wall);
  if (walls.empty()) return;
  const LeafBonds bonds = deriveLeafBonds(job, settingOut);
  for (const size_t wall : walls) ParapetBuilder(job, settingOut, wall, works).build(bonds);
}

}  // namespace model
