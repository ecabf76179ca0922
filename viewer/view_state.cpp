#include "viewer/view_state.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "viewer/section.h"

namespace viewer {
namespace {

constexpr double kEaseSeconds = 0.55;

}  // namespace

const char* nameOf(Tab tab) {
  switch (tab) {
    case Tab::Stages:
      return "Stages";
    case Tab::Dates:
      return "Dates";
    case Tab::Levels:
      return "Levels";
    case Tab::Readings:
      return "Readings";
    case Tab::Quantities:
      return "Quantities";
    case Tab::Show:
      return "Show";
    case Tab::View:
      return "View";
    case Tab::Problems:
      return "Problems";
    case Tab::Keys:
      return "Keys";
    case Tab::Book:
      return "Level book";
    case Tab::None:
      break;
  }
  return "";
}

const std::vector<std::string>& viewOrder() {
  static const std::vector<std::string> order{"plan",       "south",      "east",
                                              "north",      "west",       "south-west",
                                              "south-east", "north-east", "north-west"};
  return order;
}

ViewState::ViewState() {
  overlays.corners = true;
  overlays.captions = overlays.titleBlock = overlays.tape = overlays.rod = true;
  overlays.lines = true;
}

void ViewState::goToView(const std::string& name, const Scene& scene, const SheetLayout& layout) {
  const auto fitted = fittedView(name, scene, layout, seesUnderGround());
  if (!fitted) return;
  const auto& order = viewOrder();
  const auto at = std::find(order.begin(), order.end(), name);
  if (at != order.end()) view_ = size_t(at - order.begin());
  easeTo(*fitted);
}

void ViewState::goToStageView(const StageView& view, const Scene& scene,
                              const SheetLayout& layout) {
  followed_ = view;
  switches.seeThrough = view.seeThrough;
  easeTo(cameraOf(view, layout));
  cutting_.begin(section, view.section, scene);
}

void ViewState::followStage(int stage, const StageView& view, const Scene& scene,
                            const SheetLayout& layout) {
  if (!followStages || stage == followedStage_) return;
  followedStage_ = stage;
  if (followed_ && sameView(*followed_, view)) return;
  const bool byHand = section.on && !cutting_.made(section);
  StageView shown = view;
  if (byHand) shown.section = section;
  goToStageView(shown, scene, layout);
  followed_ = view;
}

void ViewState::cycleView(const Scene& scene, const SheetLayout& layout) {
  goToView(viewOrder()[(view_ + 1) % viewOrder().size()], scene, layout);
}

void ViewState::frame(const glm::vec3& low, const glm::vec3& high, const SheetLayout& layout) {
  easeTo(framed(camera, low, high, layout));
}

void ViewState::frameBuilding(const Scene& scene, const SheetLayout& layout) {
  easeTo(framedBuilding(camera, scene, layout, seesUnderGround()));
}

void ViewState::easeTo(const Camera& target) {
  cutting_.finish(section);  // of a move before this one
  from_ = camera;
  to_ = target;
  eased_ = 0;
  easing_ = true;
}

void ViewState::jumpTo(const Camera& target) {
  cutting_.finish(section);
  camera = target;
  easing_ = false;
}

void ViewState::shift(const glm::vec2& pixels, const SheetLayout& layout) {
  const glm::vec2 size{layout.sheet.width(), layout.sheet.height()};
  for (Camera* each : {&camera, &from_, &to_}) each->pan(pixels / size, double(size.x / size.y));
}

void ViewState::refit(const Box& before, const Box& after, double shape,
                      const SheetLayout& layout) {
  const auto room = [&](const Box& box) {
    return std::min(double(box.width()), double(box.height()) * shape);
  };
  const glm::vec2 size{layout.sheet.width(), layout.sheet.height()};
  const double factor = room(before) / room(after), aspect = double(size.x / size.y);
  for (Camera* each : {&camera, &from_, &to_}) each->zoomTo(before.centre() / size, factor, aspect);
  shift(after.centre() - before.centre(), layout);
}

void ViewState::easeRefit(const Box& before, const Box& after, double shape,
                          const SheetLayout& layout) {
  const Camera now = camera, target = easing_ ? to_ : camera;
  camera = target;
  refit(before, after, shape, layout);
  const Camera fitted = camera;
  camera = now;
  easeTo(fitted);
}

bool ViewState::advance(double seconds) {
  if (!easing_) return false;
  eased_ = std::min(1.0, eased_ + seconds / kEaseSeconds);
  camera = between(from_, to_, eased_);
  cutting_.at(eased_, section);
  easing_ = eased_ < 1;
  return true;
}

void ViewState::toggleSection(const model::Model& model, const Scene& scene) {
  cutting_.finish(section);
  if (section.on) {
    section.on = false;
    return;
  }
  // Towards the eye lies what is cut away.
  const double azimuth = easing_ ? to_.azimuth : camera.azimuth;
  const double east = -std::sin(azimuth), north = -std::cos(azimuth);
  const Across across = std::abs(east) > std::abs(north) ? Across::X : Across::Y;
  const double towardsEye = across == Across::X ? east : north;
  section = sectionAt(scene, across, tellingCut(model, across), towardsEye < 0 ? -1 : 1);
}

void ViewState::toggleMeasuring() {
  measuring = !measuring;
  selected = selectedUnit = kNothing;
  clearMeasured();
}

void ViewState::addMeasured(const glm::vec3& point, std::uint32_t on, SnapKind kind) {
  if (measured.size() >= 2) clearMeasured();
  measured.push_back(point);
  measuredOn.push_back(on);
  measuredKinds.push_back(kind);
}

std::vector<Snap> ViewState::measuredSnaps() const {
  std::vector<Snap> snaps;
  for (size_t i = 0; i < measured.size(); ++i)
    snaps.push_back({i < measuredKinds.size() ? measuredKinds[i] : SnapKind::None, measured[i]});
  return snaps;
}

void ViewState::clearMeasured() {
  measured.clear();
  measuredOn.clear();
  measuredKinds.clear();
}

void ViewState::originMoved(const glm::vec3& by) {
  for (Camera* each : {&camera, &from_, &to_}) each->target -= by;
  for (glm::vec3& point : measured) point -= by;
  section.plane.w += glm::dot(glm::vec3(section.plane), by);
  cutting_.originMoved(by);
}

void ViewState::readFrom(const std::optional<model::SetUp>& setUp, const model::Job& job) {
  const auto instrument = setUp ? instrumentOf(job, *setUp) : std::nullopt;
  standing = instrument ? setUp : std::nullopt;
  placing = false;
  overlays.instrument |= instrument.has_value();
  switches.levelPlane = instrument.has_value();
  if (instrument) switches.levelPlaneAt = float(instrument->collimation);
}

bool ViewState::planeIsLine(const model::Job& job) const {
  constexpr double kSame = 0.0005;
  const auto instrument = standing ? instrumentOf(job, *standing) : std::nullopt;
  return switches.levelPlane && instrument &&
         std::abs(instrument->collimation - double(switches.levelPlaneAt)) < kSame;
}

std::optional<WantedLevel> ViewState::wantedNow(const model::Job& job) const {
  if (wanted) return wanted;
  if (!switches.levelPlane || planeIsLine(job)) return std::nullopt;
  return WantedLevel{"", double(switches.levelPlaneAt)};
}

bool ViewState::backOut() {
  if (placing) return placing = false, true;
  if (!measured.empty()) return clearMeasured(), true;
  if (measuring) return measuring = false, true;
  if (tab != Tab::None) return tab = Tab::None, true;
  if (selected != kNothing) return selected = selectedUnit = kNothing, true;
  if (wanted) return wanted.reset(), true;
  if (standing) return standing.reset(), switches.levelPlane = false, true;
  if (switches.levelPlane) return switches.levelPlane = false, true;
  if (section.on) return section.on = false, true;
  return false;
}

}  // namespace viewer
