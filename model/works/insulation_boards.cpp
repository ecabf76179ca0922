// Insulation of the cavity in boards of their own size, tight to each other: rows between the ties,
// half a board from row to row, cut at corners, closers, barriers, trays and under the rafters.
#include <algorithm>
#include <cmath>

#include "model/geometry/touching_shells.h"
#include "model/walls/wall_names.h"
#include "model/works/across_cavity.h"
#include "model/works/cavity_parts.h"
#include "model/works/gable_rise.h"
#include "model/works/stretches.h"
#include "model/works/wall_infill.h"

namespace model {

namespace {

constexpr double kLeastPiece = 0.100;  // of a row's last board: else the one before it is cut too
constexpr double kSliver = 1e-3;       // metres: a thinner piece is none
constexpr double kPastCorner = 1;      // metres
constexpr double kUnderSlope = 0.020;  // of a piece under the rafters

class Boards {
 public:
  Boards(const Job& job, const SettingOut& settingOut, const CavityPlan& plan, Works& works)
      : job_(job),
        settingOut_(settingOut),
        plan_(plan),
        works_(works),
        line_(settingOut.walls[plan.wall]),
        layer_(layerOf(settingOut, plan.wall,
                       settingOut.faceDistances.innerLeafFront - job.walls.insulation,
                       settingOut.faceDistances.innerLeafFront)) {}

  void build() {
    if (layer_.empty()) return;
    levelTop_ = levelTopOf(job_, settingOut_, layer_, plan_.wall, false);
    if (!plan_.slope.empty()) slope_ = gableLineOn(job_, settingOut_, layer_);
    for (const CloserPlan& closer : plan_.closers) holes_.push_back(closer.rect);
    holes_.insert(holes_.end(), plan_.openings.begin(), plan_.openings.end());
    for (const TrayPlan& tray : plan_.trays) holes_.push_back(tray.pastCorners());
    for (const BarrierPlan& barrier : plan_.barriers) {
      holes_.push_back(barrier.rect);
      if (barrier.upright) continue;
      // Boards may run on past the cavity's full thickness at a corner.
      holes_.back().s0 -= kPastCorner;
      holes_.back().s1 += kPastCorner;
    }
    holes_.insert(holes_.end(), plan_.sleeves.begin(), plan_.sleeves.end());
    for (const TiePlan& tie : plan_.ties) ties_.push_back(slitFor(tie));
    parts_.resize(settingOut_.lifts.size() + 1);
    double bottom = insulationBottom(settingOut_), top = bottom;
    for (int row = 0; bottom < highest() - kSliver; ++row, bottom = top) {
      top = topOfRow(bottom);
      layRow(row, bottom, top);
    }
    besideTrays();
    for (size_t i = 0; i < parts_.size(); ++i) put(i);
  }

 private:
  double highest() const {
    if (slope_.empty()) return levelTop_;
    double high = levelTop_;
    for (const FacePair& pair : slope_) high = std::max({high, pair.front.y, pair.back.y});
    return high;
  }

  // Where a tie goes through the insulation.
  Rect slitFor(const TiePlan& tie) const {
    const double cavity = plan_.layer.thickness();
    const auto levelAt = [&](double d) {
      return tie.outer + (tie.inner - tie.outer) * (d - plan_.layer.outer) / cavity;
    };
    const double front = levelAt(layer_.outer), half = kTieThickness / 2;
    return {tie.s - kTieWidth / 2, std::min(front, tie.inner) - half, tie.s + kTieWidth / 2,
            std::max(front, tie.inner) + half};
  }

  // A row ends at the highest row of ties that a board reaches, or at its own height.
  double topOfRow(double bottom) const {
    constexpr double kOver = 0.012;  // rows of ties a little farther apart are met all the same
    const double full = job_.walls.builtIn.boardHeight;
    double top = 0;
    for (size_t i = 0; i < ties_.size(); ++i) {
      if (plan_.ties[i].extra) continue;
      const double z = ties_[i].z0;
      if (z > bottom + full / 2 && z < bottom + full + kOver) top = std::max(top, z);
    }
    return std::min(top > 0 ? top : bottom + full, highest());
  }

  // Places of the upright joints of a row: its ends included.
  std::vector<double> jointsOf(int row) const {
    const double board = job_.walls.builtIn.boardLength;
    std::vector<double> joints{layer_.from};
    for (double s = layer_.from + (row % 2 == 0 ? board : board / 2); s < layer_.to - kSliver;
         s += board)
      joints.push_back(s);
    joints.push_back(layer_.to);
    const size_t n = joints.size();
    if (n > 2 && joints[n - 1] - joints[n - 2] < kLeastPiece)
      joints[n - 2] =
          joints[n - 1] - std::min(2 * kLeastPiece, (joints[n - 1] - joints[n - 3]) / 2);
    return joints;
  }

  void layRow(int row, double bottom, double top) {
    const std::vector<double> joints = jointsOf(row);
    for (size_t i = 0; i + 1 < joints.size(); ++i) {
      Rect board{joints[i], bottom, joints[i + 1], top};
      if (slope_.empty()) board.z1 = std::min(board.z1, levelTop_);
      for (const Rect& r : overConcrete(board)) lay(r);
    }
  }

  // What of a board stands over the concrete that the wall stands on.
  std::vector<Rect> overConcrete(const Rect& board) const {
    if (board.z0 >= settingOut_.levels.dampCourse) return {board};
    std::vector<Rect> parts;
    for (Rect r : aboveConcrete(settingOut_, layer_, plan_.wall, board.z1)) {
      r = {std::max(r.s0, board.s0), std::max(r.z0, board.z0), std::min(r.s1, board.s1), board.z1};
      const bool goesOn = !parts.empty() && parts.back().z0 == r.z0 && parts.back().s1 == r.s0;
      if (goesOn)
        parts.back().s1 = r.s1;
      else if (!r.empty())
        parts.push_back(r);
    }
    return parts;
  }

  size_t partAt(double level) const {
    if (!slope_.empty() && level > levelTop_ - kSliver) return settingOut_.lifts.size();
    for (size_t i = 0; i + 1 < settingOut_.lifts.size(); ++i)
      if (level < settingOut_.lifts[i].top - kSliver) return i;
    return settingOut_.lifts.size() - 1;
  }

  void lay(const Rect& board) {
    if (board.s1 - board.s0 < kSliver || board.z1 - board.z0 < kSliver) return;
    std::vector<Rect> cuts;
    for (const auto* list : {&holes_, &ties_})
      for (const Rect& r : *list)
        if (r.overlaps(board)) cuts.push_back(r);
    Solid& solid = parts_[partAt(board.z0)];
    const bool clear = slope_.empty() || lowestOver(board.s0, board.s1) >= board.z1;
    if (!clear) {
      underRafters(board, cuts, solid);
    } else if (cuts.empty()) {
      layer_.addBox(board, solid);
    } else {
      solid.append(layer_.solid(fromRectangles({board}, cuts)));
    }
  }

  // The slope over a length of wall; where that ends at a corner, over its mitre too.
  double lowestOver(double s0, double s1) const {
    if (s0 < layer_.from + kSliver) s0 = std::min(layer_.startFront, layer_.startBack);
    if (s1 > layer_.to - kSliver) s1 = std::max(layer_.endFront, layer_.endBack);
    return lowestBetween(slope_, s0, s1);
  }
  double slopeAt(double s) const { return lowestOver(s, s); }

  // A board of a gable, cut to the slope: the lower of the two faces rules.
  void underRafters(const Rect& board, const std::vector<Rect>& cuts, Solid& solid) {
    std::vector<double> places{board.s0, board.s1};
    const auto note = [&](double s, double apart) {
      if (std::none_of(places.begin(), places.end(),
                       [&](double other) { return std::abs(other - s) < apart; }) &&
          s > board.s0 && s < board.s1)
        places.push_back(s);
    };
    // However near to one another: between them a board would stand out over a slope that turns up.
    for (const FacePair& pair : slope_)
      for (const double s : {pair.front.x, pair.back.x}) note(s, 2e-6);
    std::sort(places.begin(), places.end());
    // Where the slope passes the board's bottom and top.
    const std::vector<double> kinks = places;
    for (size_t i = 0; i + 1 < kinks.size(); ++i) {
      const double a = slopeAt(kinks[i]), b = slopeAt(kinks[i + 1]);
      for (const double level : {board.z0 + kUnderSlope, board.z1})
        if ((a - level) * (b - level) < 0)
          note(kinks[i] + (kinks[i + 1] - kinks[i]) * (level - a) / (b - a), kSliver);
    }
    std::sort(places.begin(), places.end());
    std::vector<Vec2> top;
    const auto finish = [&] {
      if (top.size() > 1 && top.back().x - top.front().x > kSliver) cutOut(board, top, cuts, solid);
      top.clear();
    };
    for (size_t i = 0; i < places.size(); ++i) {
      const double z = std::min(slopeAt(places[i]), board.z1);
      if (z < board.z0 + kUnderSlope - 1e-6)
        finish();
      else
        top.push_back({places[i], z});
    }
    finish();
  }

  void cutOut(const Rect& board, const std::vector<Vec2>& top, const std::vector<Rect>& cuts,
              Solid& solid) {
    Region whole;
    whole.outer = {{top.front().x, board.z0}, {top.back().x, board.z0}};
    whole.outer.insert(whole.outer.end(), top.rbegin(), top.rend());
    Regions holes;
    for (Rect r : cuts) {
      // What ends with the board goes on past it: rounded by itself, its end would be now inside
      // and now outside.
      if (std::abs(r.s0 - board.s0) < kSliver) r.s0 -= kSliver;
      if (std::abs(r.s1 - board.s1) < kSliver) r.s1 += kSliver;
      if (std::abs(r.z0 - board.z0) < kSliver) r.z0 -= kSliver;
      if (std::abs(r.z1 - board.z1) < kSliver) r.z1 += kSliver;
      holes.push_back({{{r.s0, r.z0}, {r.s1, r.z0}, {r.s1, r.z1}, {r.s0, r.z1}}, {}});
    }
    solid.append(layer_.solid(holes.empty() ? Regions{whole} : subtract({whole}, holes)));
  }

  // Over and under a tray the board is cut to its slope.
  void besideTrays() {
    const WallLayer& cavity = plan_.layer;
    const double front = layer_.outer, in = layer_.inner;
    for (const TrayPlan& tray : plan_.trays) {
      const double sheet = tray.sheetAt(cavity, front), top = tray.rect().z1;
      const double s0 = tray.from + (tray.stopFrom ? kTrayThickness : 0),
                   s1 = tray.to - (tray.stopTo ? kTrayThickness : 0);
      Polygon under{{front, tray.low}, {in, tray.low}, {in, tray.high}};
      if (sheet > tray.low + 1e-6) under.push_back({front, sheet});
      const Polygon over{{front, sheet + kTrayThickness}, {in, top}, {front, top}};
      Solid& part = parts_[partAt(tray.low)];
      for (const Stretch& s : pastTray(tray, tray.from, tray.to))
        part.append(alongLayer(cavity, under, s.from, s.to));
      for (const Stretch& s : pastTray(tray, s0, s1))
        part.append(alongLayer(cavity, over, s.from, s.to));
    }
  }

  // A length of what is cut to a tray's slope, but for the ties and upright barriers there.
  std::vector<Stretch> pastTray(const TrayPlan& tray, double from, double to) const {
    std::vector<Stretch> stretches{{from, to}};
    const auto keepOff = [&](const Rect& r) {
      if (r.overlaps(tray.rect())) leaveOut(r.s0, r.s1, stretches);
    };
    for (const Rect& tie : ties_) keepOff(tie);
    for (const BarrierPlan& barrier : plan_.barriers)
      if (barrier.upright) keepOff(barrier.rect);
    std::erase_if(stretches, [](const Stretch& s) { return s.to - s.from < kSliver; });
    return stretches;
  }

  void put(size_t part) {
    if (parts_[part].empty()) return;
    const bool gable = part == settingOut_.lifts.size();
    Element element;
    element.id = layerId(line_, "cavity insulation") + "/" +
                 (gable ? "gable" : liftId(job_, settingOut_.lifts[part]));
    element.name = layerName(line_, "cavity insulation") + ", " +
                   (gable ? "gable" : liftName(job_, settingOut_.lifts[part]));
    element.kind = ElementKind::CavityInsulation;
    element.material = Material::Insulation;
    element.quantity = {volume(parts_[part]) / layer_.thickness(), Unit::SquareMetre};
    element.solid = std::move(parts_[part]);
    if (gable) {
      element.placed = gableRise(job_, settingOut_);
    } else {
      const Lift& lift = settingOut_.lifts[part];
      const double from = part == 0 ? insulationBottom(settingOut_) : lift.bottom;
      element.placed = upward({StageKind::RunIn, lift.storey, lift.number}, from, lift.top);
    }
    element.wall = line_.name;
    // What a slope and a barrier leave of a board may hang together along an edge only.
    if (!slope_.empty()) separateTouchingShells(element.solid);
    add(works_, std::move(element));
  }

  const Job& job_;
  const SettingOut& settingOut_;
  const CavityPlan& plan_;
  Works& works_;
  const WallLine& line_;
  WallLayer layer_;
  double levelTop_ = 0;
  std::vector<FacePair> slope_;
  std::vector<Rect> holes_, ties_;
  std::vector<Solid> parts_;  // by lift, then the gable
};

}  // namespace

void buildInsulationBoards(const Job& job, const SettingOut& settingOut, const CavityPlan& plan,
                           Works& works) {
  Boards(job, settingOut, plan, works).build();
}

}  // namespace model
