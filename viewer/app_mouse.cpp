// What the mouse does: one hand turns, moves, pulls the tape, slides the rod and asks.
#include <GLFW/glfw3.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include <glm/geometric.hpp>

#include "viewer/app_session.h"
#include "viewer/panels/section_handle.h"

namespace viewer {
namespace {

constexpr float kClickSlack = 4;  // units that a click may wander
constexpr float kSnapReach = 14;  // units within which a corner or edge pulls
constexpr double kTurnPerUnit = 0.006;
constexpr double kZoomPerStep = 0.87;
constexpr double kDoubleClickSeconds = 0.35;

double metresPerUnit(const Camera& camera, double depth, float height) {
  const double at = camera.parallel ? camera.distance : depth;
  return 2 * at * std::tan(camera.fieldOfView / 2) / double(height);
}

}  // namespace

bool Session::touched() {
  // An example that plays by itself stops at the first touch.
  if (!std::exchange(playWhenLoaded_, false)) return false;
  const bool showed = playback_.playing();
  playback_.pause();
  playback_.setStageSeconds({});
  state_.followStages = false;
  return showed;
}

void Session::handleMouse() {
  const ImGuiIO& io = ImGui::GetIO();
  for (const ButtonEvent& event : window_.takeButtons()) {
    if (!job_ || event.button > 2) continue;
    if (event.down && covered(event.at)) touched();
    if (event.down && drag_ == Drag::None && !covered(event.at)) press(event);
    if (!event.down && drag_ != Drag::None && event.button == dragButton_) {
      continueDrag(event.at);
      endDrag(event.at);
    }
  }
  const glm::vec2 at = glmOf(io.MousePos);
  if (drag_ != Drag::None && ImGui::IsMousePosValid()) continueDrag(at);
  const glm::vec2 rolled{io.MouseWheelH, io.MouseWheel};
  if (drag_ == Drag::None && job_ && rolled != glm::vec2(0) && !io.WantCaptureMouse)
    wheel(at, rolled);
}

bool Session::covered(const glm::vec2& at) const {
  const SheetLayout layout = layoutNow();
  if (presenting_.on()) return false;
  if (layout.tabs.contains(at)) return true;
  if (titleEdit_.open() && titleEdit_.box().contains(at)) return true;
  if (levelEdit_.open() && levelEdit_.box().contains(at)) return true;
  const float sheetRight = layout.tabs.right + sheets_.pulledOut(letteringNow().unit);
  return sheets_.shown() != Tab::None && at.x < sheetRight && at.y < layout.tape.top - 40;
}

void Session::press(const ButtonEvent& event) {
  clickSpent_ = touched();
  levelEdit_.close();
  titleEdit_.close();  // a click elsewhere leaves the field
  const double now = window_.now();
  const bool twice = event.button == 0 && now - lastPress_ < kDoubleClickSeconds &&
                     glm::distance(event.at, lastPressAt_) < kClickSlack * letteringNow().unit;
  lastPress_ = event.button == 0 && !twice && !clickSpent_ ? now : -1e9;
  lastPressAt_ = event.at;
  // A touch that ends the show may turn and pull, but asks nothing yet.
  const bool asks = !clickSpent_ || layoutNow().tape.contains(event.at);
  if (event.button == 0 && asks && beginOnFurniture(event.at)) return;
  if (twice && !state_.measuring && !state_.placing)
    doubleClick(event.at);
  else
    beginDrag(event);
}

bool Session::beginOnFurniture(const glm::vec2& at) {
  if (presenting_.on()) return false;
  const SheetLayout layout = layoutNow();
  const float u = letteringNow().unit;
  dragButton_ = 0;
  dragFrom_ = dragAt_ = at;
  dragged_ = false;
  for (int i = 0; i < kPaceCount; ++i) {
    const auto box = paceBox(layout, u, Pace(i));
    if (!box || !box->contains(at)) continue;
    playBy(Pace(i));
    return true;
  }
  if (layout.tape.grown(9 * u).contains(at)) {
    drag_ = Drag::Tape;
    continueDrag(at);
    return true;
  }
  if (typeLevelAt(at)) return true;
  if (Box{layout.rod.left - 8 * u, layout.rod.top - 6 * u, layout.rod.right + 80 * u,
          layout.rod.bottom + 6 * u}
          .contains(at)) {
    drag_ = Drag::Rod;
    setLevelAt(at.y);
    return true;
  }
  if (layout.titleBlock.contains(at)) {
    if (titleRow(layout, TitleRow::View).contains(at))
      state_.cycleView(job_->scene, layout);
    else if (titleEdit_.openAt(at, job_->model.job, path_, layout))
      playback_.pause();
    return true;
  }
  const auto handle = sectionHandle(job_->scene, frameNow(), layout);
  if (handle && glm::distance(*handle, at) < 18 * u) {
    drag_ = Drag::Section;
    return true;
  }
  return false;
}

void Session::beginDrag(const ButtonEvent& event) {
  dragButton_ = event.button;
  dragFrom_ = dragAt_ = event.at;
  dragged_ = false;
  const bool pans = event.button != 0 || (event.modifiers & GLFW_MOD_SHIFT);
  drag_ = pans ? Drag::Pan : Drag::Orbit;
}

void Session::setLevelAt(float y) {
  const SheetLayout layout = layoutNow();
  const float u = letteringNow().unit;
  const RodScale scale = rodScaleOf(job_->model, frameNow(), layout);
  double level = scale.levelAt(std::clamp(y, layout.rod.top, layout.rod.bottom));
  // A scheduled level that is near pulls; otherwise whole 5 mm, as a staff is read.
  double best = std::round(level * 200) / 200, reach = 4.0 * double(u);
  for (const auto& scheduled : job_->model.settingOut.schedule) {
    const double away = std::abs(double(scale.yAt(scheduled.level) - y));
    if (away < reach) reach = away, best = scheduled.level;
  }
  setLevel(best);
}

void Session::continueDrag(const glm::vec2& at) {
  const SheetLayout layout = layoutNow();
  const glm::vec2 by = at - dragAt_;
  const float u = letteringNow().unit;
  const float width = layout.sheet.width(), height = layout.sheet.height();
  if (glm::distance(at, dragFrom_) > kClickSlack * u) dragged_ = true;
  dragAt_ = at;
  if (drag_ == Drag::Tape) {
    playback_.goTo(tapeOf(job_->model, layout, playback_.time(), Pen(nullptr)).timeAt(at.x));
  } else if (drag_ == Drag::Rod) {
    setLevelAt(at.y);
  } else if (drag_ == Drag::Section) {
    dragSection(state_.section, job_->scene, frameNow(), layout, by);
  } else if (dragged_ && drag_ == Drag::Orbit) {
    turnBy(double(by.x / u) * kTurnPerUnit, double(by.y / u) * kTurnPerUnit);
  } else if (dragged_ && drag_ == Drag::Pan) {
    moveBy(by / glm::vec2(width, height));
  }
}

void Session::endDrag(const glm::vec2& at) {
  const bool wasView = drag_ == Drag::Orbit;
  drag_ = Drag::None;
  framesDue_ = 3;
  if (wasView && !dragged_ && dragButton_ == 0 && !clickSpent_) click(at);
}

std::optional<Pick> Session::pickAt(const glm::vec2& at) const {
  const SheetLayout layout = layoutNow();
  const float width = layout.sheet.width(), height = layout.sheet.height();
  return job_->picker.pick(
      state_.camera.rayThrough(at / glm::vec2(width, height), double(width / height)), frameNow());
}

std::uint32_t Session::unitOf(const Pick& pick) const {
  constexpr double kToldApart = 0.006;  // metres a pixel: a brick is 11 pixels high
  const double depth = double(glm::distance(state_.camera.eye(), pick.point));
  const double pixel = metresPerUnit(state_.camera, depth, layoutNow().sheet.height());
  return pixel * double(letteringNow().unit) < kToldApart ? pick.unit : kNothing;
}

Snap Session::snapAt(const glm::vec2& at) const {
  const auto pick = pickAt(at);
  if (!pick) return {};
  const double depth = double(glm::distance(state_.camera.eye(), pick->point));
  const double reach = metresPerUnit(state_.camera, depth, layoutNow().sheet.height()) *
                       kSnapReach * double(letteringNow().unit);
  const Snap snap = job_->picker.snap(*pick, float(reach));
  return snap.kind == SnapKind::None ? Snap{SnapKind::None, pick->point} : snap;
}

void Session::click(const glm::vec2& at) {
  if (presenting_.on()) return presenting_.next(playback_);
  const auto pick = pickAt(at);
  if (state_.measuring) {
    if (!pick) return;
    const Snap snap = snapAt(at);
    state_.addMeasured(snap.point, pick->element, snap.kind);
    return;
  }
  if (state_.placing) {
    if (pick) standAt(pick->point);
    return;
  }
  if (sheets_.typesReading()) {
    if (!pick) return;
    sheets_.pointAt(*job_, job_->scene.world(pick->point));
    return;
  }
  state_.selected = pick ? pick->element : kNothing;
  state_.selectedUnit = pick ? unitOf(*pick) : kNothing;
}

void Session::standAt(const glm::vec3& local) {
  const model::Vec3 at = job_->scene.world(local);
  const model::Job& job = job_->model.job;
  state_.readFrom(standByHand(job, {at.x, at.y}, at.z), job);
}

void Session::doubleClick(const glm::vec2& at) {
  if (presenting_.on()) return presenting_.next(playback_);
  const auto pick = pickAt(at);
  if (!pick) return;
  state_.selected = pick->element;
  state_.selectedUnit = kNothing;
  const ElementRange& range = job_->scene.elements[pick->element];
  state_.frame(range.low, range.high, layoutNow());
}

void Session::wheel(const glm::vec2& at, const glm::vec2& steps) {
  constexpr float kMovePerStep = 0.05f;
  constexpr double kTurnPerStep = 0.1;
  touched();
  if (ImGui::GetIO().KeyShift) return moveBy(steps * kMovePerStep);
  // Pinching comes as a wheel with Ctrl on most trackpads: the wheel does the same without.
  if (steps.y != 0) nearerBy(at, std::pow(kZoomPerStep, double(steps.y)));
  if (steps.x != 0 && !ImGui::GetIO().KeyCtrl) turnBy(-double(steps.x) * kTurnPerStep, 0);
}

void Session::turnBy(double azimuth, double elevation) {
  wantedView_.reset();
  state_.holdStill();
  if (walking_) {
    // The drawing follows the hand: one looks the other way.
    walking_->look(-azimuth * 0.6, elevation * 0.6);
    state_.jumpTo(walking_->camera());
    return;
  }
  state_.camera.orbit(azimuth, elevation);
}

void Session::moveBy(const glm::vec2& parts) {
  wantedView_.reset();
  if (walking_) return;
  const Box sheet = layoutNow().sheet;
  state_.holdStill();
  state_.camera.pan(parts, double(sheet.width() / sheet.height()));
  state_.camera.keepSensible(job_->scene.low, job_->scene.high);
}

void Session::nearerBy(const glm::vec2& at, double factor) {
  wantedView_.reset();
  if (walking_) {
    walking_->step(factor < 1 ? 0.4f : -0.4f, 0, meets());
    state_.easeTo(walking_->camera());
    return;
  }
  const Box sheet = layoutNow().sheet;
  state_.holdStill();
  state_.camera.zoomTo(at / glm::vec2(sheet.width(), sheet.height()), factor,
                       double(sheet.width() / sheet.height()));
  state_.camera.keepSensible(job_->scene.low, job_->scene.high);
}

void Session::setLevel(double level) {
  state_.switches.levelPlane = true;
  state_.switches.levelPlaneAt = float(level);
  state_.wanted.reset();
}

bool Session::typeLevelAt(const glm::vec2& at) {
  if (!state_.switches.levelPlane) return false;
  const SheetLayout layout = layoutNow();
  const float u = letteringNow().unit;
  const RodScale scale = rodScaleOf(job_->model, frameNow(), layout);
  const float y = std::clamp(scale.yAt(double(state_.switches.levelPlaneAt)), layout.rod.top,
                             layout.rod.bottom);
  const Box words{layout.rod.right + 15 * u, y - 11 * u, layout.sheet.right, y + 11 * u};
  if (!words.contains(at)) return false;
  levelEdit_.begin(double(state_.switches.levelPlaneAt));
  return true;
}

}  // namespace viewer
