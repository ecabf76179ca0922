// The courses at the top of a garden wall that each stand out past the one below, at both sides, at
// free ends and round the piers.
#include "model/bond/corbel_course.h"
#include "model/works/garden_parts.h"

namespace model {

namespace {

class CorbelCourse {
 public:
  CorbelCourse(const GardenSite& site, int course, Works& works)
      : site_(site),
        plan_(site.plan),
        course_(course),
        out_((course - site.plan.plain + 1) * site.plan.wall->corbelStep),
        width_(site.plan.sizes.thickness() + 2 * out_),
        works_(works) {}

  void build() {
    int piers = 0;
    for (size_t i = 0; i < plan_.lengths.size(); ++i) {
      const GardenLength& length = plan_.lengths[i];
      buildLength(i);
      for (const SolidPierPlace& place : length.run.piers)
        buildPier(length, place, "pier " + std::to_string(++piers));
    }
  }

 private:
  // Lengths that meet at a corner run through it in turn. What a length that does must reach past
  // the corner of its face, or one that does not must stay short of it, follows from where the
  // other's brickwork lies.
  double atCorner(SolidEnd corner, bool runsThrough) const {
    if (corner == SolidEnd::CornerAtFace)
      return runsThrough ? out_ : out_ - width_ - plan_.sizes.joint;
    return runsThrough ? width_ - out_ : -out_ - plan_.sizes.joint;
  }

  std::vector<SolidPiece> headers(double from, double to, double width) const {
    auto pieces = layCorbelCourse(plan_.sizes, to - from, width, course_ % 2 == 0);
    for (SolidPiece& piece : pieces) {
      piece.s0 += from;
      piece.s1 += from;
    }
    return pieces;
  }

  Element started(const std::string& part) const {
    const std::string number = std::to_string(course_ - plan_.plain + 1);
    return site_.brickwork(part, "corbel course " + number, course_, course_ + 1);
  }

  void finish(Element e, const UnitFrame& frame, const std::vector<SolidPiece>& pieces) {
    std::vector<MasonryUnit> units;
    site_.addUnits(pieces, course_, course_, course_ + 1, units);
    GardenSite::finish(std::move(e), frame, units, works_);
  }

  void buildLength(size_t index) {
    const GardenLength& length = plan_.lengths[index];
    const bool runsThrough = (index + static_cast<size_t>(course_)) % 2 == 0;
    const double joint = plan_.sizes.joint;
    Element e = started(site_.lengthPart(index));
    std::vector<SolidPiece> pieces;
    for (auto [from, to] : plan_.betweenPiers(length, out_)) {
      double first = from + joint, last = to - joint;
      if (from <= 0) {
        if (length.freeStart) from -= out_;
        first = length.freeStart ? from : -atCorner(plan_.cornerBefore(index), runsThrough);
      }
      if (to >= length.length) {
        if (length.freeEnd) to += out_;
        last = length.freeEnd
                   ? to
                   : length.length + atCorner(plan_.cornerBefore(index + 1), runsThrough);
      }
      e.solid.append(
          prism(Region{plan_.part(length, from, to, -out_, plan_.sizes.thickness() + out_), {}},
                plan_.levelOf(course_), plan_.levelOf(course_ + 1)));
      const auto more = headers(first, last, width_);
      pieces.insert(pieces.end(), more.begin(), more.end());
    }
    UnitFrame frame = length.frame;
    frame.start = length.at(0, -out_);
    finish(std::move(e), frame, pieces);
  }

  void buildPier(const GardenLength& length, const SolidPierPlace& place, const std::string& part) {
    Element e = started(part);
    e.solid = prism(Region{plan_.pierSquare(length, place, out_), {}}, plan_.levelOf(course_),
                    plan_.levelOf(course_ + 1));
    UnitFrame frame = length.frame;
    frame.start = length.at(place.from - out_, -plan_.pierBefore - out_);
    const double size = plan_.pierSize + 2 * out_;
    finish(std::move(e), frame, headers(0, size, size));
  }

  const GardenSite& site_;
  const GardenPlan& plan_;
  const int course_;
  const double out_, width_;  // beyond the wall's faces; of the course
  Works& works_;
};

}  // namespace

void buildGardenCorbels(const GardenSite& site, Works& works) {
  for (int course = site.plan.plain; course < site.plan.courses; ++course)
    CorbelCourse(site, course, works).build();
}

}  // namespace model
