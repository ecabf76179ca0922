#include "model/works/corbel_courses.h"

#include <algorithm>

#include "model/bond/wall_corbel.h"

namespace model {

namespace {

constexpr double kAtEnd = 2e-6;  // metres

LaidLeaf oneCourse(const LaidLeaf& leaf, size_t band, const Vec2& out,
                   std::vector<MasonryUnit> units) {
  LaidLeaf course;
  course.frame = leaf.frame;
  course.frame.start += out;
  course.bands = {leaf.bands[band]};
  course.firstOf = {0, units.size()};
  course.units = std::move(units);
  return course;
}

}  // namespace

CorbelCourse::CorbelCourse(const SettingOut& settingOut, const CorbelPlan& plan,
                           const WallLayer& inLine, const Rect& rect, size_t band, LeafParts& leaf,
                           Works& works)
    : inLine_(inLine),
      layer_(layerOf(settingOut, static_cast<size_t>(inLine.wall - settingOut.walls.data()),
                     inLine.outer - plan.out(leaf.laid().bands[band].number),
                     inLine.inner - plan.out(leaf.laid().bands[band].number))),
      rect_(rect),
      id_("corbel " + std::to_string(plan.corbel + 1) + " course " +
          std::to_string(leaf.laid().bands[band].number - plan.firstCourse + 1)),
      name_("corbel course " +
            std::to_string(leaf.laid().bands[band].number - plan.firstCourse + 1)),
      parts_(oneCourse(leaf.laid(), band,
                       inLine.wall->outward * plan.out(leaf.laid().bands[band].number),
                       leaf.setAside(band, rect.s0, rect.s1)),
             layer_, works) {}

// The ends of the leaf are where those of this course are, which lie farther out.
Rect CorbelCourse::within(Rect rect) const {
  rect.s0 = std::max(rect.s0, rect_.s0);
  rect.s1 = std::min(rect.s1, rect_.s1);
  rect.z0 = std::max(rect.z0, rect_.z0);
  rect.z1 = std::min(rect.z1, rect_.z1);
  if (rect.s0 < inLine_.from + kAtEnd) rect.s0 = std::min(rect.s0, layer_.from);
  if (rect.s1 > inLine_.to - kAtEnd) rect.s1 = std::max(rect.s1, layer_.to);
  return rect;
}

Solid CorbelCourse::solid(const std::vector<Rect>& rects, const std::vector<Rect>& without) const {
  const auto inHere = [&](const std::vector<Rect>& all) {
    std::vector<Rect> some;
    for (const Rect& rect : all)
      if (const Rect part = within(rect); !part.empty()) some.push_back(part);
    return some;
  };
  std::vector<Rect> mine = inHere(rects);
  for (Rect& rect : mine) {
    rect.s0 = std::max(rect.s0, layer_.from);
    rect.s1 = std::min(rect.s1, layer_.to);
  }
  return mine.empty() ? Solid{} : layer_.solid(fromRectangles(mine, inHere(without)));
}

std::list<CorbelCourse> corbelCourses(const SettingOut& settingOut, const LeafPlan& plan,
                                      LeafParts& leaf, Works& works) {
  std::list<CorbelCourse> courses;
  for (size_t band = 0; band < leaf.laid().bands.size(); ++band)
    for (const CorbelPlan& corbel : plan.corbels)
      if (const auto rect = corbelRect(corbel, leaf.laid(), band))
        courses.emplace_back(settingOut, corbel, plan.layer, *rect, band, leaf, works);
  return courses;
}

}  // namespace model
