// Where a film is seen from: each stage's own view, with the camera easing from one to the next.
#pragma once

#include <vector>

#include "viewer/film/film_pace.h"
#include "viewer/view_state.h"

namespace viewer {

// Which stages, of those from `first` on, have a view of their own for long enough to go there; a
// stage that is over sooner is seen from where the one before was. One view for each stage of the
// film; `own` has those of the whole programme.
std::vector<StageView> filmViews(const std::vector<StageView>& own, size_t first,
                                 const FilmPace& pace);

// How a frame is seen.
struct FilmLook {
  Camera camera;
  Section section;
  SeeThrough seeThrough = SeeThrough::Nothing;
};

class FilmCamera {
 public:
  // The scene must stay alive.
  FilmCamera(const Scene& scene, const SheetLayout& layout) : scene_(scene), layout_(layout) {}
  // Of the next frame, `seconds` after the one before; the first is there at once.
  FilmLook next(size_t stage, const StageView& view, double seconds);

 private:
  const Scene& scene_;
  SheetLayout layout_;
  ViewState state_;
  bool begun_ = false;
};

}  // namespace viewer
