#include "viewer/app_session.h"

#include <backends/imgui_impl_glfw.h>
#include <backends/imgui_impl_opengl3.h>
#include <epoxy/gl.h>

#include <algorithm>
#include <chrono>
#include <thread>
#include <utility>

#include "viewer/carry_over.h"
#include "viewer/job_words.h"
#include "viewer/opening_pace.h"
#include "viewer/overlays/words.h"
#include "viewer/panels/measure.h"
#include "viewer/panels/paper_style.h"
#include "viewer/panels/reading_card.h"
#include "viewer/panels/section_handle.h"
#include "viewer/panels/thing_card.h"
#include "viewer/sun.h"
#include "viewer/unit_words.h"

namespace viewer {
namespace {

constexpr double kFrameSeconds = 1.0 / 60;
constexpr double kEyeOverGround = 0.4;  // metres
constexpr double kHour = 10;            // mid-morning: shadows that show depth

}  // namespace

Session::Session(Window& window, std::string jobPath)
    : window_(window), path_(std::move(jobPath)), loader_(path_), watch_(path_) {
  loader_.start(window_.now());
  setUp();
}

Session::~Session() {
  renderer_.reset();
  ImGui_ImplOpenGL3_Shutdown();
  ImGui_ImplGlfw_Shutdown();
  ImGui::DestroyContext();
}

void Session::setUp() {
  IMGUI_CHECKVERSION();
  ImGui::CreateContext();
  ImGui::GetIO().IniFilename = nullptr;  // nothing of the window is kept in stray files
  ImGui_ImplGlfw_InitForOpenGL(window_.handle(), true);
  ImGui_ImplOpenGL3_Init("#version 330 core");
  letter(false);
  renderer_ = std::make_unique<Renderer>();
}

std::vector<std::string> Session::texts() const {
  std::vector<std::string> words = sheets_.texts();
  words.insert(words.end(), {path_, titleEdit_.text(), sheets_.filter});
  for (const model::Problem& problem : problems_)
    words.insert(words.end(), {problem.what, problem.instead});
  if (!job_) return words;
  const std::vector<std::string> more = jobWords(job_->model);
  words.insert(words.end(), more.begin(), more.end());
  return words;
}

void Session::letter(bool textsAreNew) {
  const float scale = window_.contentScale();
  if (scale == lettered_ && !textsAreNew) return;
  const std::vector<std::string> words = texts();
  if (scale == lettered_ && letteringCovers(words)) return;
  loadLettering(scale, words);
  ImGui_ImplOpenGL3_DestroyFontsTexture();
  ImGui_ImplOpenGL3_CreateFontsTexture();
  setPaperStyle(scale);
  lettered_ = scale;
}

void Session::letterTyped() {
  std::string typed = titleEdit_.text() + " " + sheets_.filter;
  for (const std::string& text : sheets_.texts()) typed += " " + text;
  if (typed == typed_) return;
  typed_ = typed;  // once for each text: some letters cannot be had
  if (!letteringCovers({typed})) letter(true);
}

void Session::takeLoaded() {
  bool changed = watch_.changed(window_.now());
  for (WatchFile& file : watchReadings_) changed = file.changed(window_.now()) || changed;
  if (changed) loader_.start(window_.now());
  if (std::exchange(gone_, watch_.gone()) != watch_.gone()) framesDue_ = 3;
  auto result = loader_.take(window_.now());
  if (!result) return;
  framesDue_ = 3;
  ownSave_ = false;
  watchFiles(result->files);
  problems_ = std::move(result->problems);
  if (model::hasErrors(problems_)) state_.tab = Tab::Problems;
  if (result->job) takeJob(std::move(result->job));
  letter(true);
  if (auto lacking = lackingLetters(texts())) {
    lacking->file = path_;
    problems_.push_back(*lacking);
  }
}

// A job file with errors does not tell which files it has: those of before stay watched.
void Session::watchFiles(const std::vector<std::string>& files) {
  if (files.empty()) return;
  const auto same = [](const WatchFile& watch, const std::string& file) {
    return watch.path() == file;
  };
  if (std::equal(watchReadings_.begin(), watchReadings_.end(), files.begin() + 1, files.end(),
                 same))
    return;
  watchReadings_.clear();
  for (size_t i = 1; i < files.size(); ++i) watchReadings_.emplace_back(files[i]);
}

void Session::takeJob(std::unique_ptr<ReadyJob> job) {
  if (!model::hasErrors(problems_) && state_.tab == Tab::Problems) state_.tab = Tab::None;
  if (job_) carryOver(state_, *job_, *job);
  if (walking_) toggleWalking();
  job_ = std::move(job);
  sheets_.entry.jobChanged();
  pointSight_.forget();
  pieces_.reset();
  steppedTo_.reset();
  wantedView_.reset();
  playback_.setStageCount(int(job_->model.programme.stages.size()));
  playBy(playback_.pace());
  renderer_->setScene(job_->scene);
  window_.setTitle(job_->model.job.name + " - Stringcourse");
  if (std::exchange(firstView_, false)) firstLook();
}

void Session::firstLook() {
  drawing_ = {};  // what was drawn while the file was read had another layout: nothing steps aside
  // The first stage's view is known at once; the last one's only after all others, which a large
  // job takes seconds for.
  const StageView* first = playWhenLoaded_ ? job_->views.waitFor(0) : nullptr;
  state_.goToStageView(first ? *first : finishedView(job_->model, job_->scene), job_->scene,
                       layoutNow());
  state_.advance(1e9);
  if (playWhenLoaded_) {
    state_.followStages = true;
    playback_.setStageSeconds(openingPace(job_->model));
    playback_.play();
  } else {
    playback_.goTo(playback_.stageCount());
  }
}

void Session::goToOwnView() {
  wantedView_ = frameNow().stage;
  takeWantedView();
}

void Session::takeWantedView() {
  if (!wantedView_ || !job_) return;
  if (frameNow().stage != *wantedView_) {  // gone on meanwhile
    wantedView_.reset();
  } else if (const StageView* own = job_->views.at(*wantedView_)) {
    wantedView_.reset();
    state_.goToStageView(*own, job_->scene, layoutNow());
  }
}

bool Session::moving() const {
  return playback_.playing() || state_.easing() || drag_ != Drag::None || sheets_.sliding() ||
         framesDue_ > 0 || freshField() || !pressed_.empty();
}

void Session::run() {
  double last = window_.now();
  while (!window_.shouldClose() || !mayClose()) {
    // Nothing moves: wait for a hand, waking only to look at the file.
    const double wait = moving() || loader_.busy() ? 0 : WatchFile::kEvery;
    if (window_.waitFor(wait)) framesDue_ = 3;
    takeLoaded();
    takeWantedView();
    const double now = window_.now();
    const double passed = std::min(now - last, 0.25);
    last = now;
    if (!moving() && (!loader_.slow(now) || ownSave_)) {
      if (loader_.busy()) std::this_thread::sleep_for(std::chrono::milliseconds(5));
      continue;
    }
    framesDue_ = std::max(0, framesDue_ - 1);
    step(passed);
    drawFrame();
    const double spent = window_.now() - now;
    if (playback_.playing() || state_.easing() || drag_ != Drag::None) quality_.measured(spent);
    if (spent < kFrameSeconds)
      std::this_thread::sleep_for(std::chrono::duration<double>(kFrameSeconds - spent));
  }
}

void Session::step(double seconds) {
  const bool was = playback_.playing() || state_.easing();
  playback_.advance(seconds);
  if (job_ && state_.followStages && drag_ == Drag::None) {
    const int stage = frameNow().stage;
    if (const StageView* own = job_->views.at(stage))
      state_.followStage(stage, *own, job_->scene, layoutNow());
  }
  state_.advance(seconds);
  // The building steps aside for a sheet.
  sheets_.advance(state_.tab, seconds, layoutNow().titleBlock.left / letteringNow().unit);
  makeRoom();
  // One more frame after the last movement: it is drawn at full quality.
  if (was && !playback_.playing() && !state_.easing()) framesDue_ = std::max(framesDue_, 2);
}

void Session::makeRoom() {
  const SheetLayout now = layoutNow();
  const Box was = std::exchange(drawing_, now.drawing), sheet = std::exchange(sheet_, now.sheet);
  // Another size of window is no step aside.
  if (!job_ || was == now.drawing || sheet != now.sheet || was.width() <= 0) return;
  const double shape = shapeOf(job_->scene);
  if (sheets_.sliding())
    state_.refit(was, now.drawing, shape, now);
  else
    state_.easeRefit(was, now.drawing, shape, now);
}

SheetLayout Session::layoutNow() const {
  const ImVec2 size = ImGui::GetIO().DisplaySize;
  const glm::vec2 known = size.x > 0 ? glmOf(size) : glm::vec2(window_.size());
  const float unit = letteringNow().unit;
  const float aside = sheets_.pulledOut(unit);
  if (!job_) return layOutSheet(known.x, known.y, unit, aside);
  return sheetOf(job_->model, state_.overlays, known.x, known.y, unit, aside);
}

double Session::groundUnder(const glm::vec3& local) const {
  const model::Vec3 at = job_->scene.world(local);
  return job_->model.settingOut.terrain.levelAt({at.x, at.y});
}

Frame Session::frameNow() const {
  Frame frame;
  frame.time = playback_.time();
  frame.camera = state_.camera;
  frame.section = state_.section;
  frame.seeThrough = state_.switches.seeThrough;
  frame.ghosts = state_.switches.ghosts;
  frame.profiles = state_.overlays.lines || state_.overlays.clientWords;
  frame.levelPlane = state_.switches.levelPlane;
  frame.levelPlaneAt = state_.switches.levelPlaneAt;
  frame.shadows = state_.switches.shadows;
  frame.selected = state_.selected;
  frame.selectedUnit = state_.selectedUnit;
  frame.markCuts = state_.overlays.cutUnits;
  frame.stage = stageAt(playback_.time(), size_t(playback_.stageCount()));
  if (job_) {
    markNewest(frame);
    const model::Job& job = job_->model.job;
    frame.sun = sunDirection(job.site.latitude, dayOfYear(job.programme.start.c_str()), kHour,
                             job.site.northBearing);
  }
  quality_.apply(frame, playback_.playing() || state_.easing() || drag_ == Drag::Orbit ||
                            drag_ == Drag::Pan || drag_ == Drag::Tape || drag_ == Drag::Section);
  return frame;
}

void Session::drawFrame() {
  letter(false);
  letterTyped();
  ImGui_ImplOpenGL3_NewFrame();
  ImGui_ImplGlfw_NewFrame();
  giveTab();
  ImGui::NewFrame();
  handleKeys();
  handleMouse();
  if (job_ && !walking_ && !state_.camera.parallel)
    state_.camera.keepAbove(groundUnder(state_.camera.eye()) + kEyeOverGround);
  const Frame frame = frameNow();
  drawSheet(frame);
  ImGui::Render();
  drawBuilding(frame);
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
  window_.swap();
}

void Session::drawReading(ImDrawList* list, const glm::vec2& mouse, const SheetLayout& layout) {
  const ImGuiIO& io = ImGui::GetIO();
  const float u = letteringNow().unit;
  if (state_.placing) {
    const std::string words = "Click where the instrument stands";
    drawReadingCard(list, {words}, mouse, layout.drawing);
    return;
  }
  const model::Job& job = job_->model.job;
  const auto wanted = state_.wantedNow(job);
  if (state_.measuring || playback_.playing()) return;
  if (drag_ != Drag::None || io.WantCaptureMouse || !ImGui::IsMousePosValid()) return;
  if (covered(mouse) || layout.titleBlock.contains(mouse) || mouse.y > layout.tape.top - 40 * u ||
      mouse.x > layout.rod.left - 8 * u)
    return;
  const bool reads = state_.standing || wanted;
  const auto pick = reads || !job_->scene.units.empty() ? pickAt(mouse) : std::nullopt;
  if (!pick) return;
  const std::uint32_t unit = unitOf(*pick);
  if (!reads && unit == kNothing) return;
  const auto from = state_.standing ? instrumentOf(job, *state_.standing) : std::nullopt;
  const model::Vec3 at = job_->scene.world(pick->point);
  std::vector<std::string> words;
  if (reads) words = pointWords(at.z, from, wanted);
  if (unit != kNothing)
    words.push_back(unitWords(job_->model, pick->element, job_->scene.modelUnits[unit]));
  if (from) {
    const auto& carry = pointSight_.words(job, job_->model.settingOut, *state_.standing, at);
    words.insert(words.end(), carry.begin(), carry.end());
  }
  drawReadingCard(list, words, mouse,
                  {layout.drawing.left, layout.captions.top, layout.rod.left - 8 * u,
                   layout.tape.top - 42 * u});
}

void Session::drawBuilding(const Frame& frame) {
  const glm::ivec2 pixels = window_.framebufferSize();
  glBindFramebuffer(GL_FRAMEBUFFER, 0);
  glViewport(0, 0, pixels.x, pixels.y);
  const glm::vec3 paper =
      glm::vec3((ink::kPaper >> 16) & 255, (ink::kPaper >> 8) & 255, ink::kPaper & 255) / 255.0f;
  glClearColor(paper.x, paper.y, paper.z, 1);
  glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
  if (job_ && pixels.x > 0 && pixels.y > 0) renderer_->draw(frame, pixels.x, pixels.y);
}

void Session::drawSheet(const Frame& frame) {
  const SheetLayout layout = layoutNow();
  const glm::vec2 mouse = glmOf(ImGui::GetIO().MousePos);
  SheetsInput input{state_, playback_, problems_, path_, job_.get(), frame, layout};
  input.reading = loader_.slow(window_.now()) && !ownSave_;
  input.gone = gone_;
  if (job_) {
    OverlayOptions options;
    options.picker = &job_->picker;
    if (!ImGui::GetIO().WantCaptureMouse) options.pointer = mouse;
    options.standing = state_.standing;
    options.setOut = &job_->setOut;
    options.asBuilt = &job_->asBuilt;
    options.facts = &job_->facts;
    options.readingSet = state_.readingSet;
    options.pulledOut = sheets_.pulledOut(letteringNow().unit);
    options.viewIsButton = !presenting_.on();
    options.fieldsAreButtons = canChange(path_);
    giveWords(options);
    drawOverlays(job_->model, job_->scene, frame, state_.overlays, int(layout.sheet.width()),
                 int(layout.sheet.height()), options);
    ImDrawList* list = ImGui::GetBackgroundDrawList();
    if (frame.section.on && !presenting_.on()) drawSectionHandle(list, job_->scene, frame, layout);
    if (state_.measuring) {
      const Snap snap = snapAt(mouse);
      drawMeasure(list, job_->scene, frame, layout, state_.measuredSnaps(), snap);
    }
    drawThingCard(list, *job_, frame, layout);
    drawReading(list, mouse, layout);
  }
  if (presenting_.dark()) Pen(ImGui::GetForegroundDrawList()).fill(layout.sheet.grown(2), 0x000000);
  if (presenting_.on()) return;
  drawSheets(sheets_, input);
  if (const auto pace = std::exchange(sheets_.wantedPace, std::nullopt)) playBy(*pace);
  if (std::exchange(sheets_.wantsOwnView, false)) goToOwnView();
  followSaved();
  if (job_ && levelEdit_.open()) {
    const RodScale scale = rodScaleOf(job_->model, frame, layout);
    if (const auto level = levelEdit_.draw(job_->model.settingOut, layout, scale)) {
      setLevel(*level);
      framesDue_ = 3;
    }
  }
  if (titleEdit_.draw(path_, layout)) {
    // What was typed a moment ago appears without a notice of reading.
    watch_.accept();
    ownSave_ = true;
    framesDue_ = 3;
    loader_.start(window_.now());
  }
}

}  // namespace viewer
