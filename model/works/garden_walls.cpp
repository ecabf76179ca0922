// Garden walls brick by brick: every day's rise of each straight length and of each pier, then what
// stands out at the top, and the coping.
#include <algorithm>
#include <cmath>

#include "model/walls/leaf_plan.h"
#include "model/works/garden_parts.h"
#include "model/works/parts.h"

namespace model {

double GardenSite::timeOf(int course) const {
  const int days = (plan.courses + perDay - 1) / perDay;
  const int day = std::min(course / perDay, days - 1), first = day * perDay;
  const double done = static_cast<double>(course - first) / std::min(perDay, plan.courses - first);
  return (day + done) * kGardenBricksUp / mostDays;
}

std::string GardenSite::idOf(const std::string& part, const std::string& what) const {
  return id + "/" + (part.empty() ? "" : part + "/") + what;
}

std::string GardenSite::nameOf(const std::string& part, const std::string& what) const {
  return name + (part.empty() ? "" : ", " + part) + (what.empty() ? "" : ", " + what);
}

std::string GardenSite::lengthPart(size_t length) const {
  return plan.lengths.size() > 1 ? "length " + std::to_string(length + 1) : "";
}

Element GardenSite::brickwork(const std::string& part, const std::string& what, int first,
                              int last) const {
  Element e;
  e.id = idOf(part, what);
  e.name = nameOf(part, plan.courses > perDay || first > 0 ? what : "");
  e.wall = id;
  e.kind = ElementKind::GardenWall;
  e.material = Material::Brick;
  e.placed = upward({StageKind::GardenWalls}, plan.levelOf(first), plan.levelOf(last),
                    timeOf(first), timeOf(last));
  return e;
}

void GardenSite::addUnits(const std::vector<SolidPiece>& pieces, int course, int first, int last,
                          std::vector<MasonryUnit>& units) const {
  for (size_t k = 0; k < pieces.size(); ++k) {
    const SolidPiece& piece = pieces[k];
    MasonryUnit unit;
    unit.s0 = piece.s0;
    unit.s1 = piece.s1;
    unit.d0 = static_cast<float>(piece.d0);
    unit.d1 = static_cast<float>(piece.d1);
    unit.z1 = plan.levelOf(course + 1);
    unit.z0 = unit.z1 - brickHeight;
    unit.course = static_cast<std::int16_t>(course);
    unit.piece = piece.piece;
    unit.header = piece.header;
    const double done = (static_cast<double>(k) + 0.5) / static_cast<double>(pieces.size());
    unit.when = static_cast<float>((course - first + done) / (last - first));
    units.push_back(unit);
  }
}

void GardenSite::finish(Element e, const UnitFrame& frame, const std::vector<MasonryUnit>& units,
                        Works& works) {
  e.quantity = {volume(e.solid), Unit::CubicMetre};
  if (e.solid.empty()) return;
  e.frame = works.frames.size();
  works.frames.push_back(frame);
  e.firstUnit = works.units.size();
  e.unitCount = units.size();
  works.units.insert(works.units.end(), units.begin(), units.end());
  add(works, std::move(e));
}

namespace {

int coursesInDay(const Job& job, const GardenPlan& plan) {
  return std::max(1, static_cast<int>(job.laying.dayRise / plan.gauge + 1e-6));
}

class GardenBuilder {
 public:
  GardenBuilder(const GardenSite& site, Works& works)
      : site_(site), plan_(site.plan), works_(works) {}

  void build() {
    for (size_t i = 0; i < plan_.lengths.size(); ++i) {
      const GardenLength& length = plan_.lengths[i];
      buildLength(length, site_.lengthPart(i));
      for (const SolidPierPlace& place : length.run.piers)
        buildPier(length, place, "pier " + std::to_string(++piers_));
    }
  }

 private:
  // Calls raise(first course, course after the last, "day 1") for each day's rise of what does not
  // stand out.
  template <class Raise>
  void dayByDay(const Raise& raise) const {
    for (int first = 0, day = 1; first < plan_.plain; first += site_.perDay, ++day)
      raise(first, std::min(first + site_.perDay, plan_.plain), "day " + std::to_string(day));
  }

  // Courses [first, last) of a part of the plan, but for the damp course among them.
  void addUpright(Element& e, const Polygon& plan, int first, int last) const {
    double from = plan_.levelOf(first);
    if (plan_.dampCourse && *plan_.dampCourse >= first && *plan_.dampCourse < last) {
      const double sheet = plan_.levelOf(*plan_.dampCourse);
      if (*plan_.dampCourse > first) e.solid.append(prism(Region{plan, {}}, from, sheet));
      from = sheet + kDampCourseThickness;
    }
    e.solid.append(prism(Region{plan, {}}, from, plan_.levelOf(last)));
  }

  template <class PiecesOf>
  void finish(Element e, const UnitFrame& frame, int first, int last, const PiecesOf& piecesOf) {
    std::vector<MasonryUnit> units;
    for (int course = first; course < last; ++course)
      site_.addUnits(piecesOf(static_cast<size_t>(course)), course, first, last, units);
    GardenSite::finish(std::move(e), frame, units, works_);
  }

  void buildLength(const GardenLength& length, const std::string& part) {
    const auto pieces = [&](size_t course) {
      return length.run.courses[course % length.run.courses.size()];
    };
    dayByDay([&](int first, int last, const std::string& day) {
      Element e = site_.brickwork(part, day, first, last);
      for (const auto& [from, to] : plan_.betweenPiers(length))
        addUpright(e, plan_.part(length, from, to, 0, plan_.sizes.thickness()), first, last);
      finish(std::move(e), length.frame, first, last, pieces);
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
    dayByDay([&](int first, int last, const std::string& day) {
      Element e = site_.brickwork(part, day, first, last);
      addUpright(e, plan_.pierSquare(length, place), first, last);
      finish(std::move(e), frame, first, last, pieces);
    });
  }

  const GardenSite& site_;
  const GardenPlan& plan_;
  Works& works_;
  int piers_ = 0;
};

}  // namespace

void buildGardenDampCourse(const GardenSite& site, Works& works) {
  const GardenPlan& plan = site.plan;
  if (!plan.dampCourse) return;
  const double under = plan.levelOf(*plan.dampCourse);
  const auto put = [&](const std::string& part, const std::vector<Polygon>& sheets, double width) {
    Element e;
    e.id = site.idOf(part, "damp course");
    e.name = site.nameOf(part, "damp course");
    e.wall = site.id;
    e.kind = ElementKind::DampCourse;
    e.material = Material::Membrane;
    for (const Polygon& sheet : sheets)
      e.solid.append(prism(Region{sheet, {}}, under, under + kDampCourseThickness));
    e.quantity = {volume(e.solid) / (kDampCourseThickness * width), Unit::Metre};
    e.placed = whole({StageKind::GardenWalls}, site.timeOf(*plan.dampCourse));
    add(works, std::move(e));
  };
  int piers = 0;
  for (size_t i = 0; i < plan.lengths.size(); ++i) {
    const GardenLength& length = plan.lengths[i];
    std::vector<Polygon> sheets;
    for (const auto& [from, to] : plan.betweenPiers(length))
      sheets.push_back(plan.part(length, from, to, 0, plan.sizes.thickness()));
    put(site.lengthPart(i), sheets, plan.sizes.thickness());
    for (const SolidPierPlace& place : length.run.piers)
      put("pier " + std::to_string(++piers), {plan.pierSquare(length, place)}, plan.pierSize);
  }
}

void buildGardenWalls(const Job& job, const SettingOut&, Works& works) {
  std::vector<GardenSite> sites;
  int days = 1;
  for (size_t i = 0; i < job.gardenWalls.size(); ++i) {
    GardenSite site{planGardenWall(job, job.gardenWalls[i]), gardenWallId(i),
                    gardenWallName(job, i), job.walls.brickHeight};
    site.perDay = coursesInDay(job, site.plan);
    days = std::max(days, (site.plan.courses + site.perDay - 1) / site.perDay);
    sites.push_back(std::move(site));
  }
  for (GardenSite& site : sites) {
    site.mostDays = days;
    GardenBuilder(site, works).build();
    buildGardenDampCourse(site, works);
    buildGardenCorbels(site, works);
    if (site.plan.wall->coping > 0) buildGardenCoping(site, works);
  }
}

}  // namespace model
