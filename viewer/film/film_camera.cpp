#include "viewer/film/film_camera.h"

namespace viewer {
namespace {

constexpr double kLeastLook = 2.5;  // seconds from one place
constexpr double kCalmer = 0.35;    // of the window's haste: nobody has asked for this move

}  // namespace

std::vector<StageView> filmViews(const std::vector<StageView>& own, size_t first,
                                 const FilmPace& pace) {
  const size_t count = pace.seconds().size();
  std::vector<StageView> views(own.begin() + static_cast<long>(first),
                               own.begin() + static_cast<long>(first + count));
  for (size_t i = 1; i < count; ++i) {
    double lasts = 0;
    for (size_t j = i; j < count && sameView(own[first + j], own[first + i]); ++j)
      lasts += pace.seconds()[j];
    if (lasts < kLeastLook) views[i] = views[i - 1];
  }
  return views;
}

FilmLook FilmCamera::next(size_t stage, const StageView& view, double seconds) {
  constexpr double kLongEnough = 1e3;
  state_.followStages = true;
  state_.followStage(static_cast<int>(stage), view, scene_, layout_);
  state_.advance(begun_ ? seconds * kCalmer : kLongEnough);
  begun_ = true;
  return {state_.camera, state_.section, state_.switches.seeThrough};
}

}  // namespace viewer
