#include "viewer/film/film_camera.h"

namespace viewer {
namespace {

constexpr double kLeastLook = 2.5;  // seconds from one place
constexpr double kCalmer = 0.35;    // of the window's haste: nobody has asked for this move

}  // namespace

std::vector<StageView> filmViews(const model::Model& model, size_t first, const FilmPace& pace) {
  std::vector<StageView> own;
  for (size_t i = 0; i < pace.seconds().size(); ++i)
    own.push_back(stageView(model, static_cast<int>(first + i)));
  std::vector<StageView> views = own;
  for (size_t i = 1; i < own.size(); ++i) {
    double lasts = 0;
    for (size_t j = i; j < own.size() && own[j] == own[i]; ++j) lasts += pace.seconds()[j];
    if (lasts < kLeastLook) views[i] = views[i - 1];
  }
  return views;
}

Camera FilmCamera::next(const StageView& view, double seconds) {
  constexpr double kLongEnough = 1e3;
  state_.followStages = true;
  state_.followStage(view, scene_, layout_);
  state_.advance(begun_ ? seconds * kCalmer : kLongEnough);
  begun_ = true;
  return state_.camera;
}

}  // namespace viewer
