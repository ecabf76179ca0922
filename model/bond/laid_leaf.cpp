#include "model/bond/laid_leaf.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "model/bond/course_bands.h"
#include "model/bond/leaf_units.h"
#include "model/bond/toothing.h"
#include "model/bond/wall_corbel.h"
#include "model/settingout/gable_edges.h"
#include "model/walls/gable_profile.h"

namespace model {
namespace {

constexpr double kHair = 1e-6;
constexpr double kFar = 1e6;

// What is in any of `open` but not in `other`, as lengths of their own.
std::vector<Span> onlyIn(const std::vector<Span>& open, const std::vector<Span>& other) {
  std::vector<Span> left;
  for (const Span& length : open)
    for (const Span& part : solidParts(length[0], length[1], other)) left.push_back(part);
  return left;
}

// Lengths that touch as one.
std::vector<Span> joined(std::vector<Span> lengths) {
  std::sort(lengths.begin(), lengths.end());
  std::vector<Span> all;
  for (const Span& length : lengths) {
    if (!all.empty() && length[0] <= all.back()[1] + kHair)
      all.back()[1] = std::max(all.back()[1], length[1]);
    else
      all.push_back(length);
  }
  return all;
}

class LeafLayer {
 public:
  LeafLayer(const Job& job, const SettingOut& out, const LeafBonds& bonds, const LeafPlan& plan)
      : job_(job), out_(out), bonds_(bonds), plan_(plan), brick_(plan.side == LeafSide::Outer) {}

  LaidLeaf lay() {
    setFrame();
    double top = plan_.levelTop;
    if (out_.walls[plan_.wall].eaves == EavesKind::Gable) {
      slope_ = gableLineOn(job_, out_, plan_.layer);
      for (const FacePair& place : slope_)
        top = std::max(top, std::min(place.front.y, place.back.y));
      setNeighbourTops();
      endsReturn_ = brick_ && parapetOn(job_, out_, plan_.wall) != nullptr;
    }
    gatherCuts();
    if (brick_) toothings_ = toothingsOf(job_, out_, plan_.wall);
    leaf_.bands = courseBands(job_, out_, plan_, top);
    for (const CourseBand& band : leaf_.bands) {
      leaf_.firstOf.push_back(leaf_.units.size());
      layBand(band);
    }
    leaf_.firstOf.push_back(leaf_.units.size());
    return std::move(leaf_);
  }

 private:
  void setFrame() {
    leaf_.frame = frameOf(plan_.layer);
    if (brick_) {
      const WallBond& bond = bonds_.outer.walls[plan_.wall];
      mitres_ = {bond.start.special, bond.end.special};
    } else {
      const BlockWall& bond = bonds_.inner.walls[plan_.wall];
      mitres_ = {bond.mitredStart, bond.mitredEnd};
    }
  }

  void gatherCuts() {
    cuts_ = plan_.cuts();
    for (const DampStepPlan& step : plan_.dampSteps)
      for (const Rect& joint : step.joints(job_.walls.joint)) cuts_.push_back(joint);
    for (const FoundationRun& run : out_.foundations) {
      if (run.wall != plan_.wall) continue;
      const double from = run.from <= kHair ? -kFar : run.from;
      const double to = run.to >= out_.walls[plan_.wall].length - kHair ? kFar : run.to;
      cuts_.push_back({from, -kFar, to, run.top});
    }
  }

  std::vector<LaidPiece> piecesOf(int number, const std::vector<Span>& open) const {
    return brick_ ? layCourse(bonds_.outer, plan_.wall, number, open)
                  : layBlocks(bonds_.inner, plan_.wall, number, open);
  }

  // A course of its whole height, with what of it goes into a standing wall or stands out at a
  // corner.
  std::vector<LaidPiece> toothed(const CourseBand& band, const std::vector<Span>& open) const {
    std::vector<LaidPiece> pieces = piecesOf(band.number, open);
    for (const Toothing& toothing : toothings_)
      toothPieces(job_, bonds_.outer, toothing, band.number, out_.walls[plan_.wall].length, pieces);
    for (const CorbelPlan& corbel : plan_.corbels)
      shapeCorbelCourse(out_, bonds_.outer, plan_.wall, corbel, band.number, pieces);
    return pieces;
  }

  // Over the eaves of the next walls a gable has no corner to turn: where it would butt against
  // them its own pieces close the end.
  void setNeighbourTops() {
    const size_t n = out_.walls.size();
    const std::array<size_t, 2> next{(plan_.wall + n - 1) % n, (plan_.wall + 1) % n};
    for (const size_t end : {0u, 1u}) {
      const WallLayer layer = layerOf(out_, next[end], plan_.layer.outer, plan_.layer.inner);
      neighbourTops_[end] = levelTopOf(job_, out_, layer, next[end], brick_);
    }
  }

  void closeEnds(const CourseBand& band, std::vector<LaidPiece>& pieces) const {
    if (slope_.empty() || pieces.empty() || endsReturn_) return;
    const WallLayer& layer = plan_.layer;
    const double longest = layer.thickness() + 2 * joint(), shortest = kLeastUnit + joint();
    if (!mitres_[0] && band.bottom > neighbourTops_[0] - kHair) {
      LaidPiece end;
      end.from = std::min(layer.startFront, layer.startBack);
      end.to = pieces.front().from - joint();
      const double gap = pieces.front().from - end.from;
      if (gap > shortest && gap < longest) pieces.insert(pieces.begin(), end);
    }
    if (!mitres_[1] && band.bottom > neighbourTops_[1] - kHair) {
      LaidPiece end;
      end.from = pieces.back().to + joint();
      end.to = std::max(layer.endFront, layer.endBack);
      const double gap = end.to - pieces.back().to;
      if (gap > shortest && gap < longest) pieces.push_back(end);
    }
  }

  // Half way up between two levels.
  std::vector<Span> openBetween(double bottom, double top) const {
    std::vector<Span> open;
    const double middle = (bottom + top) / 2;
    for (const Rect& cut : cuts_)
      if (cut.z0 < middle && cut.z1 > middle) open.push_back({cut.s0, cut.s1});
    return joined(std::move(open));
  }

  void layBand(const CourseBand& band) {
    std::vector<double> edges{band.bottom};
    for (const Rect& cut : cuts_)
      for (const double z : {cut.z0, cut.z1})
        if (z > band.bottom + kHair && z < band.top - kHair) edges.push_back(z);
    if (edges.size() == 1)
      return put(band, band, toothed(band, openBetween(band.bottom, band.top)));
    edges.push_back(band.top);
    std::sort(edges.begin(), edges.end());
    std::vector<std::vector<Span>> open;
    std::vector<Span> any;
    for (size_t i = 0; i + 1 < edges.size(); ++i) {
      open.push_back(openBetween(edges[i], edges[i + 1]));
      any.insert(any.end(), open.back().begin(), open.back().end());
    }
    any = joined(std::move(any));
    put(band, band, toothed(band, any));
    // What is solid only over or under an edge: cut in height.
    for (size_t i = 0; i + 1 < edges.size(); ++i)
      for (const Span& local : onlyIn(any, open[i]))
        layLocal(band, edges[i], edges[i + 1], local, open[i]);
  }

  void layLocal(const CourseBand& band, double bottom, double top, Span local,
                const std::vector<Span>& open) {
    const auto atVoid = [&](double s) {
      return std::any_of(open.begin(), open.end(), [&](const Span& o) {
        return std::fabs(o[0] - s) < kHair || std::fabs(o[1] - s) < kHair;
      });
    };
    const double joint = job_.walls.joint;
    if (!atVoid(local[0])) local[0] += joint;
    if (!atVoid(local[1])) local[1] -= joint;
    if (local[1] - local[0] < kLeastUnit) return;
    put(band, {bottom, top, band.number},
        piecesOf(band.number, {{-kFar, local[0]}, {local[1], kFar}}));
  }

  void put(const CourseBand& band, const CourseBand& part, std::vector<LaidPiece> pieces) {
    closeEnds(part, pieces);
    MasonryUnit unit;
    unit.z0 = part.bottom + job_.walls.joint;
    unit.z1 = part.top;
    if (unit.height() < kLeastUnit) return;
    unit.course = static_cast<std::int16_t>(band.number);
    const double whole = brick_ ? job_.walls.brickHeight : job_.walls.blockHeight;
    const bool split = unit.height() < whole - kSameUnit;
    for (const LaidPiece& piece : pieces) {
      if (piece.length() < kLeastUnit) continue;
      unit.s0 = piece.from;
      unit.s1 = piece.to;
      const bool through = piece.front == piece.back;
      unit.d0 = static_cast<float>(plan_.layer.outer + piece.front);
      unit.d1 = static_cast<float>(through ? plan_.layer.inner : plan_.layer.outer + piece.back);
      unit.header = piece.header;
      setMitres(plan_.layer, mitres_, joint(), piece, unit);
      unit.piece = split ? Piece::Split : pieceOf(piece);
      if (slope_.empty() || part.top < plan_.levelTop + kHair)
        push(unit);
      else
        putRaked(unit);
    }
  }

  double joint() const { return job_.walls.joint; }

  void push(const MasonryUnit& unit) {
    // A step of the concrete or a slope may leave less at a sharp corner than its mitre takes.
    if (canBeLaid(leaf_.frame, unit)) leaf_.units.push_back(unit);
  }

  Piece pieceOf(const LaidPiece& piece) const {
    if (piece.special) return Piece::Special;
    const double unit = brick_ ? job_.walls.brickLength : job_.walls.blockLength;
    const Piece kind = pieceOfLength(piece.length(), unit, joint());
    if (piece.header && kind == Piece::Half && plan_.layer.thickness() > unit - kSameUnit)
      return Piece::Whole;
    const double closer = ((unit - joint()) / 2 - joint()) / 2;
    if (brick_ && kind == Piece::Cut && std::fabs(piece.length() - closer) < kSameUnit)
      return Piece::Closer;
    return kind;
  }

  // The slope's level at s; the lower of both faces.
  double slopeAt(double s) const {
    double level = 1e300;
    for (const bool front : {true, false}) {
      const auto at = [&](size_t i) { return front ? slope_[i].front : slope_[i].back; };
      double here = s <= at(0).x ? at(0).y : at(slope_.size() - 1).y;
      for (size_t i = 0; i + 1 < slope_.size(); ++i) {
        const Vec2 p = at(i), q = at(i + 1);
        if (s >= p.x && s <= q.x && q.x > p.x) here = p.y + (q.y - p.y) * (s - p.x) / (q.x - p.x);
      }
      level = std::min(level, here);
    }
    return level;
  }

  // A piece on a slope, part by part where the slope turns over it.
  void putRaked(const MasonryUnit& unit) {
    std::vector<double> turns{unit.s0, unit.s1};
    for (const FacePair& place : slope_)
      for (const double s : {place.front.x, place.back.x})
        if (s > unit.s0 + kLeastUnit && s < unit.s1 - kLeastUnit) turns.push_back(s);
    std::sort(turns.begin(), turns.end());
    for (size_t i = 0; i + 1 < turns.size(); ++i) {
      MasonryUnit part = unit;
      part.s0 = turns[i];
      part.s1 = turns[i + 1];
      part.mitredStart = unit.mitredStart && i == 0;
      part.mitredEnd = unit.mitredEnd && i + 2 == turns.size();
      putUnderSlope(part);
    }
  }

  void putUnderSlope(MasonryUnit unit) {
    double left = slopeAt(unit.s0), right = slopeAt(unit.s1);
    if (std::min(left, right) >= unit.z1 - kHair) return push(unit);
    if (std::max(left, right) <= unit.z0 + kLeastUnit) return;
    // Off where the slope goes down past the bed.
    const double run = unit.length(), rise = right - left;
    if (left < unit.z0) {
      unit.s0 += run * (unit.z0 - left) / rise;
      left = unit.z0;
    } else if (right < unit.z0) {
      unit.s1 -= run * (unit.z0 - right) / -rise;
      right = unit.z0;
    }
    unit.piece = Piece::Raked;
    unit.rake0 = static_cast<float>(left);
    unit.rake1 = static_cast<float>(right);
    push(unit);
  }

  const Job& job_;
  const SettingOut& out_;
  const LeafBonds& bonds_;
  const LeafPlan& plan_;
  const bool brick_;
  std::vector<Rect> cuts_;
  std::vector<FacePair> slope_;            // of a gable
  std::array<double, 2> neighbourTops_{};  // of a gable: of the leaves at its start and end
  std::vector<Toothing> toothings_;        // of the outer leaf
  std::array<bool, 2> mitres_{};           // at the wall's start and end
  bool endsReturn_ = false;  // of a parapet: its corners are turned above the eaves too
  LaidLeaf leaf_;
};

}  // namespace

LeafBonds deriveLeafBonds(const Job& job, const SettingOut& settingOut) {
  return {deriveDryBond(job, settingOut), deriveBlockBond(job, settingOut)};
}

LaidLeaf layLeaf(const Job& job, const SettingOut& settingOut, const LeafBonds& bonds,
                 const LeafPlan& plan) {
  return LeafLayer(job, settingOut, bonds, plan).lay();
}

}  // namespace model
