#include "model/geometry/wave_figure.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <tuple>

#include "model/geometry/vector_math.h"

namespace model {
namespace {

class FigureBuilder {
 public:
  FigureBuilder(const std::vector<WaveLine>& lines, const WaveLoop& loop, const WaveEvents& events)
      : lines_(lines), loop_(loop), events_(events), group_(loop.size()), place_(loop.size()) {
    for (const WaveCorner& corner : loop) at_.push_back(corner.at(events.time));
    std::iota(group_.begin(), group_.end(), size_t{0});
  }

  WaveFigure build() {
    joinCorners();
    makePlaces();
    for (size_t k = 0; k < loop_.size(); ++k) cutEdge(k);
    removeDoubled();
    return std::move(figure_);
  }

 private:
  size_t next(size_t k) const { return k + 1 < loop_.size() ? k + 1 : 0; }
  size_t groupOf(size_t i) {
    while (group_[i] != i) i = group_[i] = group_[group_[i]];
    return i;
  }
  void join(size_t i, size_t j) {
    const size_t a = groupOf(i), b = groupOf(j);
    group_[std::max(a, b)] = std::min(a, b);
  }

  void joinCorners() {
    for (const size_t k : events_.vanishing) join(k, next(k));
    for (const auto& [i, k] : events_.hits) {
      const double along = dot(at_[i] - at_[k], lines_[loop_[k].right].direction);
      if (along < kMet) join(i, k);
      if (along > dot(at_[next(k)] - at_[k], lines_[loop_[k].right].direction) - kMet)
        join(i, next(k));
    }
    for (size_t i = 0; i < loop_.size(); ++i)
      for (size_t j = i + 1; j < loop_.size(); ++j)
        if (std::abs(at_[i].x - at_[j].x) < kMet && std::abs(at_[i].y - at_[j].y) < kMet)
          join(i, j);
  }

  void makePlaces() {
    std::vector<size_t> placeOfGroup(loop_.size());
    for (size_t i = 0; i < loop_.size(); ++i) {
      const size_t group = groupOf(i);
      if (group == i) {
        placeOfGroup[i] = figure_.places.size();
        figure_.places.emplace_back();
      }
      place_[i] = placeOfGroup[group];
      figure_.places[place_[i]].corners.push_back(i);
    }
    for (WavePlace& place : figure_.places) {
      for (const size_t i : place.corners) place.at += at_[i] / double(place.corners.size());
      place.met = place.corners.size() > 1;
    }
  }

  // The places that edge k runs through, in order, and the pieces between them.
  void cutEdge(size_t k) {
    const size_t from = place_[k], to = place_[next(k)];
    if (from == to) return;
    const WaveLine& line = lines_[loop_[k].right];
    const double length = dot(at_[next(k)] - at_[k], line.direction);
    std::vector<std::pair<double, size_t>> stops;
    for (size_t p = 0; p < figure_.places.size(); ++p) {
      if (p == from || p == to) continue;
      const Vec2 offset = figure_.places[p].at - at_[k];
      const double along = dot(offset, line.direction);
      if (along <= 0 || along >= length) continue;
      if (std::abs(dot(offset, line.inward)) < kMet || isHit(p, k)) stops.emplace_back(along, p);
    }
    std::sort(stops.begin(), stops.end());
    size_t last = from;
    for (const auto& stop : stops) {
      figure_.places[stop.second].met = true;
      figure_.pieces.push_back({last, stop.second, loop_[k].right});
      last = stop.second;
    }
    figure_.pieces.push_back({last, to, loop_[k].right});
  }

  bool isHit(size_t place, size_t edge) const {
    return std::any_of(events_.hits.begin(), events_.hits.end(),
                       [&](const auto& hit) { return hit[1] == edge && place_[hit[0]] == place; });
  }

  // Two pieces between the same places, opposite ways, have nothing left between them.
  void removeDoubled() {
    std::vector<WavePiece> kept;
    for (const WavePiece& piece : figure_.pieces) {
      const auto twin = std::find_if(kept.begin(), kept.end(), [&](const WavePiece& other) {
        return other.from == piece.to && other.to == piece.from;
      });
      if (twin == kept.end()) {
        kept.push_back(piece);
      } else {
        figure_.gone.push_back({*twin, piece});
        kept.erase(twin);
      }
    }
    figure_.pieces = std::move(kept);
  }

  const std::vector<WaveLine>& lines_;
  const WaveLoop& loop_;
  const WaveEvents& events_;
  std::vector<Vec2> at_;
  std::vector<size_t> group_, place_;
  WaveFigure figure_;
};

// The angle of the inside between a piece that arrives and one that leaves, in (0, 2 pi].
double insideAngle(const WaveLine& arriving, const WaveLine& leaving) {
  const double turn = std::atan2(cross(arriving.direction, leaving.direction),
                                 dot(arriving.direction, leaving.direction));
  const double inside = std::numbers::pi - turn;
  return inside > kParallel ? inside : 2 * std::numbers::pi;
}

}  // namespace

WaveFigure figureAt(const std::vector<WaveLine>& lines, const WaveLoop& loop,
                    const WaveEvents& events) {
  return FigureBuilder(lines, loop, events).build();
}

// At a place where several pieces meet, each arriving one goes on as the one that closes the
// narrowest wedge of inside with it: no other piece can lie in that wedge.
std::vector<size_t> followers(const std::vector<WaveLine>& lines, const WaveFigure& figure) {
  const std::vector<WavePiece>& pieces = figure.pieces;
  std::vector<std::tuple<double, size_t, size_t>> wedges;
  for (size_t a = 0; a < pieces.size(); ++a)
    for (size_t b = 0; b < pieces.size(); ++b)
      if (pieces[a].to == pieces[b].from)
        wedges.emplace_back(insideAngle(lines[pieces[a].line], lines[pieces[b].line]), a, b);
  std::sort(wedges.begin(), wedges.end());
  std::vector<size_t> follower(pieces.size(), pieces.size());
  std::vector<bool> taken(pieces.size(), false);
  for (const auto& [angle, a, b] : wedges) {
    if (follower[a] != pieces.size() || taken[b]) continue;
    follower[a] = b;
    taken[b] = true;
  }
  return follower;
}

}  // namespace model
