#include "model/bond/solid_run.h"

#include <algorithm>
#include <cmath>

#include "model/bond/quarter_course.h"

namespace model {

namespace {

constexpr double kSame = 1e-6;

// Rows of half bricks that are bonded as one: a row of stretchers, or two that headers go through.
struct Band {
  int row0 = 0, row1 = 1;
  QuarterOrder order;
};

// A course of the bond's cycle. One whose face row is `first` runs through a corner with that row;
// the length that meets it there has its quoin headers in the same course.
struct CourseForm {
  std::vector<Band> bands;
  bool first = true;
};

const QuarterOrder kStretchers{{}, {4}}, kFromHalf{{2}, {4}}, kHeaders{{2, 1}, {2}};

// The thicker walls of English bond: rows of stretchers show on one face or both, headers behind.
std::vector<CourseForm> englishForms(int n) {
  const int last = n;
  switch (n) {
    case 3:
      return {{{{0, 1, kStretchers}, {1, 3, kHeaders}}, true},
              {{{0, 2, kHeaders}, {2, 3, kStretchers}}, false}};
    case 4:
      return {{{{0, 1, kStretchers}, {1, 3, kHeaders}, {3, 4, kStretchers}}, true},
              {{{0, 2, kHeaders}, {2, 4, kHeaders}}, false}};
    default:
      return {{{{0, last, kStretchers}}, true}, {{{0, last, kHeaders}}, false}};
  }
}

std::vector<CourseForm> formsOf(const SolidSizes& sizes, bool cornered) {
  const int n = sizes.halfBricks;
  const auto form = [n](const QuarterOrder& order, bool first) {
    return CourseForm{{{0, n, order}}, first};
  };
  switch (sizes.bond) {
    case BondKind::Stretcher:
      return {form(kStretchers, true), form(kFromHalf, false)};
    case BondKind::Stack:  // bonded at corners only
      return {form(kStretchers, true),
              form(cornered ? QuarterOrder{{2, 2}, {4}} : kStretchers, false)};
    case BondKind::Header:
      return {form({{4}, {2}}, true), form({{2, 3}, {2}}, false)};
    case BondKind::English:
      return englishForms(n);
    case BondKind::Flemish:
      return {form({{}, {4, 2}}, true), form({{2, 1}, {4, 2}}, false)};
    case BondKind::EnglishGardenWall:
      return {form(kStretchers, true), form(kFromHalf, false), form(kStretchers, true),
              form(kHeaders, false)};
    case BondKind::FlemishGardenWall:
      return {form({{}, {4, 4, 4, 2}}, true), form({{2, 3}, {2, 4, 4, 4}}, false)};
  }
  return {};
}

class RunLayer {
 public:
  RunLayer(const SolidSizes& sizes, const SolidLength& length)
      : sizes_(sizes),
        length_(length),
        forms_(formsOf(sizes, length.start != SolidEnd::Stop || length.end != SolidEnd::Stop)) {
    std::rotate(forms_.begin(),
                forms_.begin() + length.shift % static_cast<std::ptrdiff_t>(forms_.size()),
                forms_.end());
  }

  SolidRun lay() {
    fitLength();
    placePiers();
    closeBands();
    for (size_t i = 0; i < forms_.size(); ++i) {
      run_.through.push_back(goesThrough(forms_[i]));
      run_.courses.push_back(course(i));
    }
    run_.broken = {at(from_), at(to_)};
    return std::move(run_);
  }

 private:
  // Whole half bricks with joints between the limits, else the quarters that there are.
  void fitLength() {
    const double modules = (length_.to - length_.from + sizes_.joint) / sizes_.half();
    const double halves = std::round(modules);
    const double over = (modules - halves) * sizes_.half();
    const double each = over / std::max(1.0, halves / 2 - 1);  // a stretcher's joint
    const bool regular =
        each > sizes_.least - sizes_.joint - kSame && each < sizes_.most - sizes_.joint + kSame;
    total_ = 2 * (regular ? halves : modules);
    step_ = (length_.to - length_.from + sizes_.joint) / total_;
    place_ = {0, total_};
  }

  // Metres along the face, of a place in quarters.
  double at(double quarters) const { return length_.from + quarters * step_; }

  // ---- piers -------------------------------------------------------------------

  // In the courses in which the wall has joints at odd quarters, or its headers at the end: but a
  // half-brick wall between two skins of its pier in the others.
  bool goesThrough(const CourseForm& form) const {
    const bool slim = sizes_.halfBricks == 1 && length_.piers.halfBricks == 3;
    return form.first == slim;
  }

  // From the nearer end of the length, so that pier and wall come on one grid.
  double onGrid(double from) const {
    const int m = length_.piers.halfBricks;
    if (sizes_.halfBricks == 1 && m == 3) return 2 * std::round((from - 1) / 2) + 1;
    const bool fours = m % 2 == 0;
    return fours ? 4 * std::round(from / 4) : 2 * std::round(from / 2);
  }

  void placePiers() {
    const int m = length_.piers.halfBricks;
    if (m == 0) return;
    const double size = 2.0 * m;
    // Middles of the first and the last, or of the corners.
    const double first = length_.start == SolidEnd::Stop ? size / 2 : sizes_.halfBricks;
    const double last = total_ - (length_.end == SolidEnd::Stop ? size / 2 : sizes_.halfBricks);
    int bays = 1;
    if (length_.piers.every > 0)
      bays = std::max(1, static_cast<int>(std::ceil(
                             (last - first) * sizes_.quarter() / length_.piers.every - 1e-6)));
    // No closer than two and a half bricks between their sides, so that there is wall to bond.
    while (bays > 1 && (last - first) / bays < size + 10) --bays;
    const double bay = (last - first) / bays;
    // Between two piers, the middle ones; with room for them to move on to the grid.
    const int bayBefore = (bays - 1) / 2;
    const double middleBay = first + bay * (bayBefore + 0.5);
    place_ = {middleBay - (bay - size) / 2 + 3, middleBay + (bay - size) / 2 - 3};
    for (int i = 0; i <= bays; ++i) {
      if (i == 0 && length_.start != SolidEnd::Stop) continue;
      if (i == bays && length_.end != SolidEnd::Stop) continue;
      const double middle = first + bay * i;
      const bool atEnd = middle > place_.middle();
      double from = i == 0 || i == bays ? 0 : onGrid((atEnd ? total_ - middle : middle) - size / 2);
      if (atEnd) from = total_ - from - size;
      piers_.push_back({from, from + size});
      SolidPierPlace place;
      // Its own size about its place in the bond.
      const double middleAt = (at(from) + at(from + size) - sizes_.joint) / 2;
      const double half = (m * sizes_.half() - sizes_.joint) / 2;
      place.from = i == 0 ? length_.from : i == bays ? length_.to - 2 * half : middleAt - half;
      place.to = place.from + 2 * half;
      place.fromEnd = atEnd;
      place.atFreeEnd = i == 0 || i == bays;
      run_.piers.push_back(place);
    }
  }

  // ---- closing -----------------------------------------------------------------

  void closeBands() {
    const int n = sizes_.halfBricks;
    for (const CourseForm& form : forms_) closed_.emplace_back(form.bands.size());
    for (const int row : {0, n - 1}) {
      std::vector<std::vector<QuarterCourse>> ways;
      std::vector<size_t> bands;
      for (const CourseForm& form : forms_) {
        for (size_t b = 0; b < form.bands.size(); ++b) {
          if (row < form.bands[b].row0 || row >= form.bands[b].row1) continue;
          bands.push_back(b);
          ways.push_back(closings(form.bands[b].order, form.bands[b].order, total_, place_));
        }
      }
      // Without a bond between them the courses close alike.
      if (sizes_.bond == BondKind::Stack)
        for (auto& way : ways) way.resize(1);
      const auto chosen = lapped(ways);
      for (size_t i = 0; i < forms_.size(); ++i) {
        if (!closed_[i][bands[i]].joints.empty()) continue;
        closed_[i][bands[i]] = chosen[i];
        note(chosen[i]);
      }
    }
    for (size_t i = 0; i < forms_.size(); ++i)
      for (size_t b = 0; b < forms_[i].bands.size(); ++b)
        if (closed_[i][b].joints.empty()) {
          const QuarterOrder& order = forms_[i].bands[b].order;
          closed_[i][b] = closings(order, order, total_, place_)[0];
          note(closed_[i][b]);
        }
  }

  void note(const QuarterCourse& course) {
    if (course.to - course.from < kSame) return;
    if (to_ <= from_) from_ = course.from, to_ = course.to;
    from_ = std::min(from_, course.from);
    to_ = std::max(to_, course.to);
    double width = course.to - course.from;
    if (width > 4 + kSame) width /= 2;
    if (std::fabs(width - std::round(width)) < kSame) return;
    run_.cut = width * step_ - sizes_.joint;
  }

  // ---- pieces ------------------------------------------------------------------

  // How far from an end a row begins. Where the length runs through a corner one row does so, and
  // the others stop at the inner corner; else all stop behind that row of the other length.
  double clip(SolidEnd end, const CourseForm& form, int row) const {
    const int n = sizes_.halfBricks;
    if (end == SolidEnd::Stop) return 0;
    const bool atBack = end == SolidEnd::CornerAtBack;
    const bool runsThrough = n == 3 && atBack ? !form.first : form.first;
    if (!runsThrough) return 2;
    return row == (atBack ? n - 1 : 0) ? 0 : 2 * n;
  }

  std::vector<SolidPiece> course(size_t index) {
    const CourseForm& form = forms_[index];
    std::vector<SolidPiece> pieces;
    for (size_t b = 0; b < form.bands.size(); ++b) {
      const Band& band = form.bands[b];
      const std::vector<double>& joints = closed_[index][b].joints;
      for (size_t i = 0; i + 1 < joints.size(); ++i)
        column(form, band, joints[i], joints[i + 1], pieces);
    }
    std::stable_sort(pieces.begin(), pieces.end(), [](const SolidPiece& a, const SolidPiece& b) {
      return std::fabs(a.s0 - b.s0) > 1e-4 ? a.s0 < b.s0 : a.d0 < b.d0;
    });
    return pieces;
  }

  // A length of a band, less what corners and piers take of each row: headers and closers go
  // through both rows.
  void column(const CourseForm& form, const Band& band, double from, double to,
              std::vector<SolidPiece>& pieces) const {
    const bool across = to - from < 2 + kSame;
    for (int row = band.row0; row < band.row1; row += across ? band.row1 - band.row0 : 1) {
      const int behind = across ? band.row1 : row + 1;
      double low = clip(length_.start, form, row), high = total_ - clip(length_.end, form, row);
      std::vector<std::array<double, 2>> parts{{std::max(from, low), std::min(to, high)}};
      if (!goesThrough(form))
        parts = outsidePiers(parts[0]);
      else if (sizes_.halfBricks == 1 && length_.piers.halfBricks == 2)
        parts = behindQuoin(parts[0]);
      for (const auto& [a, b] : parts)
        if (b - a > kSame) put(a, b, row, behind, pieces);
    }
  }

  std::vector<std::array<double, 2>> outsidePiers(std::array<double, 2> part) const {
    std::vector<std::array<double, 2>> left;
    for (const auto& [from, to] : piers_) {
      if (to <= part[0] || from >= part[1]) continue;
      if (from > part[0]) left.push_back({part[0], from});
      part[0] = std::max(part[0], to);
    }
    if (part[1] > part[0]) left.push_back(part);
    return left;
  }

  // A brick pier at the end of a half-brick wall shows a header through both there.
  std::vector<std::array<double, 2>> behindQuoin(std::array<double, 2> part) const {
    if (length_.start == SolidEnd::Stop) part[0] = std::max(part[0], 2.0);
    if (length_.end == SolidEnd::Stop) part[1] = std::min(part[1], total_ - 2);
    return {part};
  }

  void put(double from, double to, int row, int behind, std::vector<SolidPiece>& pieces) const {
    const double width = to - from;
    if (width > 2 + kSame && behind - row > 1) {  // what is left of stretchers, row by row
      for (int r = row; r < behind; ++r) put(from, to, r, r + 1, pieces);
      return;
    }
    SolidPiece piece;
    const double length = width * sizes_.quarter() - sizes_.joint;
    // What the joints give is shared out along the course, so that both ends are flush.
    const double slack = width * (step_ - sizes_.quarter());
    const double share = total_ - width > kSame ? from / (total_ - width) : 0;
    piece.s0 = at(from) + slack * share;
    piece.s1 = piece.s0 + length;
    piece.d0 = row * sizes_.half();
    piece.d1 = behind * sizes_.half() - sizes_.joint;
    const bool through = behind - row > 1;
    const auto is = [&](int quarters) { return std::fabs(width - quarters) < kSame; };
    piece.header = is(2) && (through || sizes_.bond != BondKind::Stretcher);
    piece.piece = is(4)   ? Piece::Whole
                  : is(3) ? Piece::ThreeQuarter
                  : is(2) ? (through ? Piece::Whole : Piece::Half)
                  : is(1) ? Piece::Closer
                          : Piece::Cut;
    pieces.push_back(piece);
  }

  const SolidSizes& sizes_;
  const SolidLength& length_;
  std::vector<CourseForm> forms_;
  SolidRun run_;
  double total_ = 0, step_ = 0;               // quarters in the length, and what one measures here
  ClosingPlace place_;                        // about where it is closed
  double from_ = 0, to_ = 0;                  // what is closed out of order
  std::vector<std::array<double, 2>> piers_;  // in quarters
  std::vector<std::vector<QuarterCourse>> closed_;  // by course and band
};

}  // namespace

SolidSizes solidSizes(const WallBuildUp& walls, const GardenWall& wall) {
  SolidSizes sizes;
  sizes.brick = walls.brickLength;
  sizes.joint = walls.joint;
  sizes.least = walls.jointLeast.value_or(walls.joint - kJointGives);
  sizes.most = walls.jointMost.value_or(walls.joint + kJointGives);
  sizes.halfBricks = static_cast<int>(std::lround(2 * wall.bricks));
  sizes.bond = wall.bond;
  return sizes;
}

SolidRun laySolidRun(const SolidSizes& sizes, const SolidLength& length) {
  return RunLayer(sizes, length).lay();
}

}  // namespace model
