// One job in one window, from opening to closing: the loop, the mouse, the keys.
#pragma once

#include <imgui.h>

#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "viewer/fonts.h"
#include "viewer/gl/renderer.h"
#include "viewer/job_loader.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/panels/level_edit.h"
#include "viewer/panels/sheets.h"
#include "viewer/panels/title_edit.h"
#include "viewer/piece_times.h"
#include "viewer/playback.h"
#include "viewer/point_sight.h"
#include "viewer/presenting.h"
#include "viewer/view_quality.h"
#include "viewer/view_state.h"
#include "viewer/walking.h"
#include "viewer/watch_file.h"
#include "viewer/window.h"

namespace viewer {

class Session {
 public:
  Session(Window& window, std::string jobPath);
  ~Session();
  void playWhenLoaded() { playWhenLoaded_ = true; }
  // Returns when the window is closed.
  void run();

 private:
  enum class Drag { None, Tape, Rod, Orbit, Pan, Section };

  // app_session.cpp
  void setUp();
  // Every text that may have to be lettered.
  std::vector<std::string> texts() const;
  void letter(bool textsAreNew);
  // What is being typed may bring letters that no text has had.
  void letterTyped();
  void takeLoaded();
  void watchFiles(const std::vector<std::string>& files);
  void takeJob(std::unique_ptr<ReadyJob> job);
  void firstLook();
  void step(double seconds);
  // The building keeps filling its part of the sheet when that changes.
  void makeRoom();
  bool moving() const;
  void drawFrame();
  void drawBuilding(const Frame& frame);
  void drawSheet(const Frame& frame);
  // Level, staff reading, cut or fill of the point under the pointer.
  void drawReading(ImDrawList* list, const glm::vec2& mouse, const SheetLayout& layout);
  Frame frameNow() const;
  SheetLayout layoutNow() const;
  double groundUnder(const glm::vec3& local) const;

  // app_pace.cpp
  // When the job's pieces come; worked out when first asked for.
  const PieceTimes& pieces();
  void playBy(Pace pace);
  // A piece on, or one back; from then on the sheet names it. Always true.
  bool stepPiece(bool on);
  // What has come last, where pieces are looked at.
  void markNewest(Frame& frame) const;
  // What sheet and tape say of pace and piece.
  void giveWords(OverlayOptions& options) const;

  // app_keys.cpp
  void handleKeys();
  void handleKey(const KeyPress& press);
  // Turning, moving, nearer and further.
  bool moveKey(const KeyPress& press);
  // The level plane.
  bool levelKey(const KeyPress& press);
  bool playbackKey(const KeyPress& press);
  // Presenting begins or ends.
  void togglePresenting();
  void presentingKey(int key);
  // Walking about begins or ends.
  void toggleWalking();
  bool walkingKey(const KeyPress& press);
  Meets meets() const;
  bool showKey(int key);
  bool viewKey(int key);

  // app_typing.cpp
  // Keys are letters: a field has the keyboard, or is about to have it.
  bool typing() const;
  // A field is about to have the keyboard.
  bool freshField() const;
  // Keys after which letters are for another field, or none.
  static bool leavesField(const KeyPress& press);
  // The Tab key to whoever goes from field to field by it.
  void giveTab() const;
  // Keys that mean something to what is being typed.
  bool typingKey(const KeyPress& press);
  // Keys that bring a sheet to type on.
  bool sheetKey(int key);
  // A sheet has written the job's files: they are read again.
  void followSaved();
  // False once when something typed is not saved, and says so.
  bool mayClose();

  // app_mouse.cpp
  void handleMouse();
  void press(const ButtonEvent& event);
  // True where a sheet or a tab lies over the building.
  bool covered(const glm::vec2& at) const;
  void beginDrag(const ButtonEvent& event);
  bool beginOnFurniture(const glm::vec2& at);
  void continueDrag(const glm::vec2& at);
  void endDrag(const glm::vec2& at);
  // To the stage's own view: now, or as soon as it is chosen.
  void goToOwnView();
  void takeWantedView();
  void setLevelAt(float y);
  void click(const glm::vec2& at);
  // Stands the instrument there by hand.
  void standAt(const glm::vec3& local);
  void doubleClick(const glm::vec2& at);
  void wheel(const glm::vec2& at, const glm::vec2& steps);
  // The hand on the camera, however it is moved: radians, parts of the sheet, a factor.
  void turnBy(double azimuth, double elevation);
  void moveBy(const glm::vec2& parts);
  void nearerBy(const glm::vec2& at, double factor);
  void setLevel(double level);
  // Opens the field for the level when its words are there; false otherwise.
  bool typeLevelAt(const glm::vec2& at);
  // True when this has just ended the example's showing of itself.
  bool touched();
  std::optional<Pick> pickAt(const glm::vec2& at) const;
  // The unit picked, where bricks are large enough on the screen to be told apart.
  std::uint32_t unitOf(const Pick& pick) const;
  // The point to measure from, pulled to a corner or edge that is near on the screen.
  Snap snapAt(const glm::vec2& at) const;

  Window& window_;
  std::string path_;
  JobLoader loader_;
  WatchFile watch_;
  std::vector<WatchFile> watchReadings_;  // the files of readings that the job names
  std::unique_ptr<ReadyJob> job_;
  model::Problems problems_;
  std::unique_ptr<Renderer> renderer_;
  Playback playback_;
  std::shared_ptr<const PieceTimes> pieces_;  // null until asked for
  std::optional<int> wantedView_;             // the stage whose view is gone to once it is known
  std::optional<double> steppedTo_;           // the time that a step by piece has led to
  ViewState state_;
  Presenting presenting_;
  std::optional<Walking> walking_;
  Camera beforeWalk_;
  ViewQuality quality_;
  SheetsState sheets_;
  TitleEdit titleEdit_;
  LevelEdit levelEdit_;
  PointSight pointSight_;
  bool ownSave_ = false;  // the files are read again because the window has written them
  Box drawing_, sheet_;   // the layout that the building was last fitted to
  Drag drag_ = Drag::None;
  int dragButton_ = 0;
  glm::vec2 dragFrom_{0, 0}, dragAt_{0, 0};
  bool dragged_ = false;
  bool clickSpent_ = false;  // the button that is down has ended the example's show
  double lastPress_ = -1e9;
  glm::vec2 lastPressAt_{0, 0};
  bool playWhenLoaded_ = false, firstView_ = true;
  int framesDue_ = 3;  // to draw although nothing moves: what has just changed must settle
  float lettered_ = 0;
  std::deque<KeyPress> pressed_;  // keys and letters that wait for their turn
  bool midWord_ = false;          // the next key waited for the letters before it
  bool ofShortcut_ = false;       // the letter that comes next is that of a key which did something
  std::string typed_;             // what the lettering has been asked for while it was typed
  bool gone_ = false;             // the job file is
};

}  // namespace viewer
