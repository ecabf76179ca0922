// Garden walls brick by brick: every day's rise of each straight length and of each pier, then the
// coping with its caps.
#include <algorithm>
#include <cmath>

#include "model/works/garden_plan.h"
#include "model/works/parts.h"

namespace model {

namespace {

// Of the coping, all common practice, no source: its stones, how far it stands out so that the drip
// throws water clear, and its open joints.
constexpr double kCopingLength = 0.600, kCopingOut = 0.040, kCopingJoint = 0.010;

class GardenBuilder {
 public:
  GardenBuilder(const Job& job, size_t index, int mostDays, Works& works)
      : plan_(planGardenWall(job, job.gardenWalls[index])),
        id_(gardenWallId(index)),
        name_(gardenWallName(job, index)),
        mostDays_(mostDays),
        brickHeight_(job.walls.brickHeight),
        works_(works) {
    perDay_ = coursesInDay(job, plan_);
  }

  static int coursesInDay(const Job& job, const GardenPlan& plan) {
    return std::max(1, static_cast<int>(job.laying.dayRise / plan.gauge + 1e-6));
  }

  void build() {
    for (size_t i = 0; i < plan_.lengths.size(); ++i) {
      const GardenLength& length = plan_.lengths[i];
      const std::string part = plan_.lengths.size() > 1 ? "length " + std::to_string(i + 1) : "";
      buildLength(length, part);
      for (const SolidPierPlace& place : length.run.piers)
        buildPier(length, place, "pier " + std::to_string(++piers_));
    }
    if (plan_.wall->coping > 0) buildCoping();
  }

 private:
  double levelOf(int course) const {
    return course == plan_.courses ? plan_.wall->top : plan_.wall->base + course * plan_.gauge;
  }

  // Calls raise(first course, course after the last, day) for each day's rise.
  template <class Raise>
  void dayByDay(const Raise& raise) const {
    for (int first = 0, day = 0; first < plan_.courses; first += perDay_, ++day)
      raise(first, std::min(first + perDay_, plan_.courses), day);
  }

  Element started(const std::string& part, int first, int last, int day) const {
    Element e;
    const std::string number = std::to_string(day + 1);
    e.id = id_ + "/" + (part.empty() ? "" : part + "/") + "day " + number;
    e.name = name_ + (part.empty() ? "" : ", " + part) +
             (plan_.courses > perDay_ ? ", day " + number : "");
    e.wall = id_;
    e.kind = ElementKind::GardenWall;
    e.material = Material::Brick;
    const double each = kGardenBricksUp / mostDays_;
    e.placed = upward({StageKind::GardenWalls}, levelOf(first), levelOf(last), day * each,
                      (day + 1) * each);
    return e;
  }

  void finish(Element e, const UnitFrame& frame, std::vector<MasonryUnit> units) {
    e.quantity = {volume(e.solid), Unit::CubicMetre};
    if (e.solid.empty()) return;
    e.frame = works_.frames.size();
    works_.frames.push_back(frame);
    e.firstUnit = works_.units.size();
    e.unitCount = units.size();
    works_.units.insert(works_.units.end(), units.begin(), units.end());
    add(works_, std::move(e));
  }

  // The bricks of courses [first, last); each lies on its bed.
  template <class PiecesOf>
  std::vector<MasonryUnit> unitsOf(int first, int last, const PiecesOf& piecesOf) const {
    std::vector<MasonryUnit> units;
    for (int course = first; course < last; ++course) {
      const std::vector<SolidPiece> pieces = piecesOf(static_cast<size_t>(course));
      for (size_t k = 0; k < pieces.size(); ++k) {
        const SolidPiece& piece = pieces[k];
        MasonryUnit unit;
        unit.s0 = piece.s0;
        unit.s1 = piece.s1;
        unit.d0 = static_cast<float>(piece.d0);
        unit.d1 = static_cast<float>(piece.d1);
        unit.z1 = levelOf(course + 1);
        unit.z0 = unit.z1 - brickHeight_;
        unit.course = static_cast<std::int16_t>(course);
        unit.piece = piece.piece;
        unit.header = piece.header;
        const double done = (static_cast<double>(k) + 0.5) / static_cast<double>(pieces.size());
        unit.when = static_cast<float>((course - first + done) / (last - first));
        units.push_back(unit);
      }
    }
    return units;
  }

  void buildLength(const GardenLength& length, const std::string& part) {
    const auto pieces = [&](size_t course) {
      return length.run.courses[course % length.run.courses.size()];
    };
    dayByDay([&](int first, int last, int day) {
      Element e = started(part, first, last, day);
      for (const auto& [from, to] : plan_.betweenPiers(length)) {
        const Polygon plan = plan_.part(length, from, to, 0, plan_.sizes.thickness());
        e.solid.append(prism(Region{plan, {}}, levelOf(first), levelOf(last)));
      }
      finish(std::move(e), length.frame, unitsOf(first, last, pieces));
    });
  }

  void buildPier(const GardenLength& length, const SolidPierPlace& place, const std::string& part) {
    const int size = static_cast<int>(std::lround(2 * plan_.wall->pierBricks));
    UnitFrame frame = length.frame;
    frame.start = length.at(place.from, -plan_.pierBefore);
    const auto pieces = [&](size_t course) {
      const bool through = length.run.through[course % length.run.through.size()];
      return layPier(plan_.sizes, size, through, place);
    };
    dayByDay([&](int first, int last, int day) {
      Element e = started(part, first, last, day);
      e.solid = prism(Region{plan_.pierSquare(length, place), {}}, levelOf(first), levelOf(last));
      finish(std::move(e), frame, unitsOf(first, last, pieces));
    });
  }

  // ---- coping ------------------------------------------------------------------

  void addCoping(const std::string& part, const std::string& name, const UnitFrame& frame,
                 Solid solid, int pieces) {
    Element e;
    e.id = id_ + "/" + part;
    e.name = name_ + ", " + name;
    e.wall = id_;
    e.kind = ElementKind::Coping;
    e.material = Material::Concrete;
    e.quantity = {static_cast<double>(pieces), Unit::Each};
    // From end to end, on the bed of the last course.
    Placement placed = whole({StageKind::GardenWalls}, kGardenFilled);
    placed.direction = Vec3(frame.along, 0);
    placed.low = 1e300;
    placed.high = -1e300;
    for (const Vec3& p : solid.points) {
      const double s = p.x * frame.along.x + p.y * frame.along.y;
      placed.low = std::min(placed.low, s);
      placed.high = std::max(placed.high, s);
    }
    placed.end = 1;
    e.placed = placed;
    e.solid = std::move(solid);
    add(works_, std::move(e));
  }

  void buildCoping() {
    const double bottom = plan_.wall->top, top = bottom + plan_.wall->coping;
    const double front = -kCopingOut, back = plan_.sizes.thickness() + kCopingOut;
    for (size_t i = 0; i < plan_.lengths.size(); ++i) {
      const GardenLength& length = plan_.lengths[i];
      Solid stones, caps;
      int count = 0;
      for (auto [from, to] : plan_.betweenPiers(length, kCopingOut)) {
        if (from <= 0 && length.freeStart) from -= kCopingOut;
        if (to >= length.length && length.freeEnd) to += kCopingOut;
        const int pieces = std::max(
            1, static_cast<int>(std::ceil((to - from) / (kCopingLength + kCopingJoint) - 1e-6)));
        const double each = (to - from + kCopingJoint) / pieces;
        for (int k = 0; k < pieces; ++k) {
          const double s0 = from + k * each;
          const double s1 = k + 1 == pieces ? to : s0 + each - kCopingJoint;
          stones.append(prism(Region{plan_.part(length, s0, s1, front, back), {}}, bottom, top));
        }
        count += pieces;
      }
      for (const SolidPierPlace& place : length.run.piers)
        caps.append(prism(Region{plan_.pierSquare(length, place, kCopingOut), {}}, bottom, top));
      const std::string of = plan_.lengths.size() > 1 ? " of length " + std::to_string(i + 1) : "";
      if (!stones.empty()) addCoping("coping" + of, "coping" + of, length.frame, stones, count);
      if (!caps.empty())
        addCoping("caps" + of, "caps of its piers" + of, length.frame, caps,
                  static_cast<int>(length.run.piers.size()));
    }
  }

  const GardenPlan plan_;
  const std::string id_, name_;
  const int mostDays_;  // of all garden walls: they rise day by day together
  const double brickHeight_;
  Works& works_;
  int perDay_ = 1;
  int piers_ = 0;
};

}  // namespace

void buildGardenWalls(const Job& job, const SettingOut&, Works& works) {
  int days = 1;
  for (const GardenWall& wall : job.gardenWalls) {
    const GardenPlan plan = planGardenWall(job, wall);
    const int perDay = GardenBuilder::coursesInDay(job, plan);
    days = std::max(days, (plan.courses + perDay - 1) / perDay);
  }
  for (size_t i = 0; i < job.gardenWalls.size(); ++i) GardenBuilder(job, i, days, works).build();
}

}  // namespace model
