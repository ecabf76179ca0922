#include "model/geometry/wavefront.h"

#include <algorithm>
#include <cmath>

#include "model/geometry/vector_math.h"
#include "model/geometry/wave_figure.h"

namespace model {
namespace {

class Wavefront {
 public:
  Wavefront(const Polygon& outline, const std::vector<WaveLine>& lines) : lines_(lines) {
    for (const Vec2& p : outline) result_.nodes.push_back({p, 0});
  }

  WaveResult run() {
    const size_t n = lines_.size();
    WaveLoop loop;
    for (size_t i = 0; i < n; ++i) loop.push_back(corner((i + n - 1) % n, i, i));
    waiting_.push_back({loop, 0});
    // Every event takes an edge away or divides a loop: far fewer than this can happen.
    for (size_t left = 20 * n + 100; !waiting_.empty() && refused() == false; --left) {
      if (left == 0) refuse("the slopes over this outline could not be worked out", {});
      const auto [next, now] = std::move(waiting_.back());
      waiting_.pop_back();
      advance(next, now);
    }
    return std::move(result_);
  }

 private:
  struct Waiting {
    WaveLoop loop;
    double now;
  };

  bool refused() const { return !result_.refusal.empty(); }
  void refuse(const std::string& why, std::vector<size_t> edges) {
    if (refused()) return;
    result_.refusal = why;
    result_.edges = std::move(edges);
  }

  // The corner between two lines that starts at a node.
  WaveCorner corner(size_t left, size_t right, size_t birth) {
    const WaveLine &a = lines_[left], &b = lines_[right];
    WaveCorner made;
    made.left = left;
    made.right = right;
    made.birth = birth;
    made.base = result_.nodes[birth].at;
    made.since = result_.nodes[birth].run;
    const double turn = cross(a.direction, b.direction);
    made.reflex = turn < -kParallel;
    if (a.speed != b.speed && turn < kParallel) refuseStep(left, right, made);
    if (std::abs(turn) < kParallel) {
      made.velocity = b.inward * b.speed;
      return made;
    }
    made.velocity = Vec2{a.speed * b.inward.y - b.speed * a.inward.y,
                         a.inward.x * b.speed - b.inward.x * a.speed} /
                    turn;
    snapToLines(made);
    return made;
  }

  // The node may be a mean of several; the corner itself runs truly on its two lines.
  void snapToLines(WaveCorner& made) const {
    const WaveLine &a = lines_[made.left], &b = lines_[made.right];
    const double da = dot(made.base - a.from, a.inward) - a.speed * made.since;
    const double db = dot(made.base - b.from, b.inward) - b.speed * made.since;
    const double turn = cross(a.direction, b.direction);
    const Vec2 shift =
        Vec2{da * b.inward.y - db * a.inward.y, a.inward.x * db - b.inward.x * da} / turn;
    if (length(shift) < kMet) made.base -= shift;
  }

  void refuseStep(size_t left, size_t right, const WaveCorner& made) {
    const bool gableFirst = lines_[left].speed == 0;
    const std::vector<size_t> edges{gableFirst ? left : right, gableFirst ? right : left};
    if (made.reflex || made.since > 0)
      refuse(
          "the gable on {0} would need a wall inside the plan, because the slope from {1} goes "
          "on past its end",
          edges);
    else
      refuse("{0} is a gable in line with the eaves of {1}", edges);
  }

  void advance(const WaveLoop& loop, double now) {
    const WaveEvents events = nextEvents(lines_, loop, now);
    if (!events.any) return refuseUncovered(loop);
    const WaveFigure figure = figureAt(lines_, loop, events);
    const std::vector<size_t> nodes = endCorners(loop, figure, events.time);
    for (const auto& [a, b] : figure.gone) {
      // Of the same line when an edge folds on itself by rounding: no roof line then.
      if (a.line != b.line) result_.arcs.push_back({nodes[a.to], nodes[a.from], a.line, b.line});
    }
    walk(loop, figure, nodes, events.time);
  }

  void refuseUncovered(const WaveLoop& loop) {
    std::vector<size_t> edges;
    std::string names;
    for (const WaveCorner& c : loop) {
      if (std::find(edges.begin(), edges.end(), c.right) != edges.end()) continue;
      names += (names.empty() ? "{" : ", {") + std::to_string(edges.size()) + "}";
      edges.push_back(c.right);
    }
    refuse("no slope covers the part of the plan between the gables " + names, edges);
  }

  // Corners end where something happens. Returns the node of each place (where something does).
  std::vector<size_t> endCorners(const WaveLoop& loop, const WaveFigure& figure, double time) {
    std::vector<size_t> nodes(figure.places.size(), 0);
    for (size_t p = 0; p < figure.places.size(); ++p) {
      const WavePlace& place = figure.places[p];
      if (!place.met) continue;
      nodes[p] = result_.nodes.size();
      result_.nodes.push_back({place.at, time});
      for (const size_t i : place.corners)
        result_.arcs.push_back({loop[i].birth, nodes[p], loop[i].left, loop[i].right});
    }
    return nodes;
  }

  // Follows what still moves into loops, which go on by themselves.
  void walk(const WaveLoop& loop, const WaveFigure& figure, const std::vector<size_t>& nodes,
            double time) {
    const std::vector<size_t> follower = followers(lines_, figure);
    std::vector<bool> walked(figure.pieces.size(), false);
    for (size_t first = 0; first < figure.pieces.size(); ++first) {
      if (walked[first]) continue;
      WaveLoop made;
      for (size_t a = first; !walked[a]; a = follower[a]) {
        walked[a] = true;
        const size_t b = follower[a];
        if (b >= figure.pieces.size())
          return refuse("the slopes over this outline could not be worked out", {});
        const size_t p = figure.pieces[a].to;
        if (!figure.places[p].met)
          made.push_back(loop[figure.places[p].corners[0]]);
        else if (figure.pieces[a].line != figure.pieces[b].line)
          made.push_back(corner(figure.pieces[a].line, figure.pieces[b].line, nodes[p]));
      }
      if (made.size() > 2) waiting_.push_back({std::move(made), time});
    }
  }

  const std::vector<WaveLine>& lines_;
  std::vector<Waiting> waiting_;
  WaveResult result_;
};

}  // namespace

WaveResult runWavefront(const Polygon& outline, const std::vector<WaveLine>& lines) {
  return Wavefront(outline, lines).run();
}

}  // namespace model
