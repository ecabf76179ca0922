// What the window shows and how: view, switches, selection, measuring. No OpenGL, no widgets.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "viewer/frame.h"
#include "viewer/framing.h"
#include "viewer/overlays/sheet_layout.h"
#include "viewer/picking.h"
#include "viewer/picture.h"
#include "viewer/scene.h"
#include "viewer/section_ease.h"
#include "viewer/stage_view.h"
#include "viewer/standing.h"

namespace viewer {

// The level book has no word of its own at the edge: it is fetched from the sheet of readings.
enum class Tab {
  None,
  Stages,
  Dates,
  Levels,
  Readings,
  Quantities,
  Show,
  View,
  Problems,
  Keys,
  Book
};
inline constexpr int kTabCount = 9;
const char* nameOf(Tab tab);

// Where a standard view is found: the keys 1 to 9 and the order of cycling.
const std::vector<std::string>& viewOrder();

struct Switches {
  SeeThrough seeThrough = SeeThrough::Nothing;
  bool ghosts = false;
  bool shadows = true;
  bool levelPlane = false;
  float levelPlaneAt = 1.0f;
};

class ViewState {
 public:
  ViewState();

  Camera camera;
  Overlays overlays;
  Switches switches;
  Section section;
  std::uint32_t selected = kNothing;
  std::uint32_t selectedUnit = kNothing;  // a brick or block of it, into Scene::units
  Tab tab = Tab::None;
  bool measuring = false;
  bool followStages = false;              // the camera goes to each stage's own view
  std::vector<glm::vec3> measured;        // none, one or two points, local
  std::vector<std::uint32_t> measuredOn;  // the things that they are on, as far as known
  std::vector<SnapKind> measuredKinds;    // what each was pulled to
  std::optional<model::SetUp> standing;   // the instrument that is read from
  std::optional<size_t> readingSet;       // of Job::readings; else the latest of every point
  bool placing = false;                   // the next click stands one by hand
  std::optional<WantedLevel> wanted;      // of the schedule; the level plane's goes when it moves

  // Eases to a standard view that fills the drawing area; nothing for an unknown name.
  void goToView(const std::string& name, const Scene& scene, const SheetLayout& layout);
  // Eases to a stage's own view, with its cut and its ground.
  void goToStageView(const StageView& view, const Scene& scene, const SheetLayout& layout);
  // With followStages on, goes there when the stage is another than the last and its view too.
  // A section that a hand has made stays.
  void followStage(int stage, const StageView& view, const Scene& scene, const SheetLayout& layout);
  // The next of viewOrder() after the one gone to last.
  void cycleView(const Scene& scene, const SheetLayout& layout);
  // Eases to the camera that shows the box in the drawing area, turned as it is.
  void frame(const glm::vec3& low, const glm::vec3& high, const SheetLayout& layout);
  // The same for the building with what stands round it.
  void frameBuilding(const Scene& scene, const SheetLayout& layout);
  void easeTo(const Camera& camera);
  void jumpTo(const Camera& camera);
  // Moves what is seen by pixels, also where an easing comes from and goes to.
  void shift(const glm::vec2& pixels, const SheetLayout& layout);
  // What filled one part of the sheet fills another as well; `shape` is its width over its height.
  // There and back again changes nothing.
  void refit(const Box& before, const Box& after, double shape, const SheetLayout& layout);
  // The same in a short while.
  void easeRefit(const Box& before, const Box& after, double shape, const SheetLayout& layout);
  bool easing() const { return easing_; }
  // Real seconds; true while the camera moves.
  bool advance(double seconds);
  // A hand on the camera stops the easing.
  void holdStill() {
    easing_ = false;
    cutting_.finish(section);
  }

  void toggleTab(Tab which) { tab = tab == which ? Tab::None : which; }
  // An upright plane where it tells most, square to the nearest of the four sides that the camera
  // looks from; or off.
  void toggleSection(const model::Model& model, const Scene& scene);
  void toggleMeasuring();
  // Reads from another instrument, or from none: the level plane is then the plane of its line.
  void readFrom(const std::optional<model::SetUp>& setUp, const model::Job& job);
  // The plane is the plane of the instrument's line.
  bool planeIsLine(const model::Job& job) const;
  // What a point is cut or filled to.
  std::optional<WantedLevel> wantedNow(const model::Job& job) const;
  void addMeasured(const glm::vec3& point, std::uint32_t on = kNothing,
                   SnapKind kind = SnapKind::None);
  // The points with what they were pulled to.
  std::vector<Snap> measuredSnaps() const;
  void clearMeasured();
  // The scene's origin has moved by `by`: what is seen, cut and measured stays where it is.
  void originMoved(const glm::vec3& by);
  // Takes back the last thing opened; false when there is none.
  bool backOut();

 private:
  bool seesUnderGround() const { return section.on || switches.seeThrough != SeeThrough::Nothing; }

  Camera from_, to_;
  double eased_ = 0;
  bool easing_ = false;
  size_t view_ = 0;
  std::optional<StageView> followed_;
  int followedStage_ = -1;
  SectionEase cutting_;
};

}  // namespace viewer
