#include "viewer/panels/sheets.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <cstring>

#include <glm/common.hpp>

#include "viewer/overlays/pen.h"
#include "viewer/panels/sheet_pages.h"

namespace viewer {
namespace {

constexpr double kSlideSeconds = 0.18;
constexpr float kBookWidth = 1000, kBesideBook = 34;  // units: at most, and left free beside it

// Lettering that reads upward, as on the spine of a folder.
void uprightText(const Pen& pen, const glm::vec2& centre, const std::string& text, Cut cut) {
  ImDrawList* list = pen.list();
  const int first = list->VtxBuffer.Size;
  // Written well inside the window first, where nothing is clipped, then turned into place.
  const glm::vec2 written{300 * pen.unit(), 100 * pen.unit()};
  pen.text(written, ink::kInk, text, cut);
  const glm::vec2 middle = glm::round(written) + pen.size(text, cut) * 0.5f;
  for (int i = first; i < list->VtxBuffer.Size; ++i) {
    ImVec2& p = list->VtxBuffer[i].pos;
    p = {std::round(centre.x) + (p.y - middle.y), std::round(centre.y) - (p.x - middle.x)};
  }
}

void drawTab(SheetsInput& input, const Pen& pen, int index) {
  const Tab tab = Tab(index + 1);
  const float u = pen.unit();
  const Box box = tabBox(input.layout, u, index);
  const ImGuiIO& io = ImGui::GetIO();
  const bool over = box.contains(glmOf(io.MousePos));
  // The level book is fetched from the sheet of readings.
  const bool open =
      input.state.tab == tab || (tab == Tab::Readings && input.state.tab == Tab::Book);
  pen.fill(box, open ? ink::kTape : ink::kCard, 0.97f);
  if (over && !open) pen.fill(box, ink::kTape, 0.4f);
  pen.outline({box.left - 3 * u, box.top, box.right, box.bottom}, ink::kInk, 1.3f);
  const bool warns = tab == Tab::Problems && !input.problems.empty();
  // In a low window the tabs are short: their words shrink with them.
  const float mark = warns ? 20 * u : 0, room = box.height() - 6 * u - mark;
  uprightText(pen.fitted(nameOf(tab), room, Cut::Bold, 0.6f), box.centre() + glm::vec2(0, mark / 2),
              nameOf(tab), open ? Cut::Bold : Cut::Text);
  if (warns) pen.caution({box.centre().x, box.top + 12 * u}, 7 * u);
}

void drawTabs(SheetsInput& input) {
  const Pen pen(ImGui::GetForegroundDrawList());
  const float u = pen.unit();
  for (int i = 0; i < kTabCount; ++i) drawTab(input, pen, i);
  // An unseen window over the tabs keeps their clicks from the building.
  const Box first = tabBox(input.layout, u, 0), last = tabBox(input.layout, u, kTabCount - 1);
  ImGui::SetNextWindowPos({first.left, first.top});
  ImGui::SetNextWindowSize({first.width(), last.bottom - first.top});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowMinSize, {1, 1});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0.0f);
  ImGui::Begin("tabs", nullptr,
               ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoBackground |
                   ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings);
  for (int i = 0; i < kTabCount; ++i) {
    const Box box = tabBox(input.layout, u, i);
    ImGui::SetCursorScreenPos({box.left, box.top});
    if (ImGui::InvisibleButton(nameOf(Tab(i + 1)), {box.width(), box.height()}))
      input.state.toggleTab(Tab(i + 1));
  }
  ImGui::End();
  ImGui::PopStyleVar(3);
}

void drawSheet(SheetsState& sheets, SheetsInput& input) {
  const Pen pen(ImGui::GetBackgroundDrawList());
  const float u = pen.unit(), width = sheets.width() * u;
  const float left = input.layout.tabs.right - width + sheets.pulledOut(u);
  const float top = 20 * u, bottom = input.layout.tape.top - 44 * u;
  ImGui::SetNextWindowPos({left, top});
  ImGui::SetNextWindowSize({width - 10 * u, bottom - top});
  ImGui::Begin("sheet", nullptr,
               ImGuiWindowFlags_NoTitleBar | ImGuiWindowFlags_NoResize | ImGuiWindowFlags_NoMove |
                   ImGuiWindowFlags_NoCollapse | ImGuiWindowFlags_NoSavedSettings |
                   ImGuiWindowFlags_NoBringToFrontOnFocus);
  ImGui::PushFont(letteringNow().heading);
  ImGui::TextUnformatted(nameOf(sheets.shown()));
  ImGui::PopFont();
  ImGui::Spacing();
  drawPage(sheets, input);
  ImGui::End();
}

// A line of words at the top of the drawing, for as long as it is so.
void drawNotice(const SheetsInput& input, const std::string& words, bool warns) {
  const Pen pen(ImGui::GetForegroundDrawList());
  const float u = pen.unit(), mark = warns ? 26 * u : 0;
  const Box& room = input.layout.drawing;
  const float inside = std::min(pen.size(words, Cut::Bold).x, room.width() - mark - 16 * u);
  const float height = pen.paragraph({0, 0}, inside, ink::kInk, words, Cut::Bold, true);
  const glm::vec2 at{room.centre().x - (inside + mark) / 2, room.top + 9 * u};
  const Box card = Box::at(at, {inside + mark, height}).grown(9 * u);
  pen.fill(card, ink::kCard);
  pen.outline(card, warns ? ink::kCaution : ink::kInk, 1.4f);
  if (warns) pen.caution({at.x + 8 * u, card.centre().y}, 8 * u);
  pen.paragraph({at.x + mark, at.y}, inside + 1, ink::kInk, words, Cut::Bold);
}

// Before any good file the sheet is empty but for what to do.
void drawEmptySheet(const SheetsInput& input) {
  const Pen pen(ImGui::GetBackgroundDrawList());
  const Box& box = input.layout.captions;
  pen.text({box.left, box.top}, ink::kInk, "Nothing drawn yet", Cut::Heading);
  const std::string words =
      "The job file has problems. Put them right in the file and save it: the building appears "
      "by itself.";
  pen.paragraph({box.left, box.top + pen.lineHeight(Cut::Heading) * 1.4f}, box.width(), ink::kInk,
                words);
}

}  // namespace

void SheetsState::advance(Tab wanted, double seconds, float room) {
  const bool in = wanted != Tab::None;
  if (in) shown_ = wanted;
  const double step = seconds / kSlideSeconds;
  const double before = out_;
  out_ = std::clamp(out_ + (in ? step : -step), 0.0, 1.0);
  const float wide = std::clamp(room - kBesideBook, kSheetWidth, kBookWidth);
  const bool wants = shown_ == Tab::Book || shown_ == Tab::Dates;
  const float wish = wants ? wide : kSheetWidth, was = width_;
  const float by = float(step) * (kBookWidth - kSheetWidth);
  // Out of sight it is as wide as it will be.
  width_ = before == 0 ? wish : std::clamp(wish, width_ - by, width_ + by);
  sliding_ = out_ != before || width_ != was;
  if (out_ == 0) shown_ = Tab::None;
}

float SheetsState::pulledOut(float unit) const {
  const double eased = out_ * out_ * (3 - 2 * out_);
  return float(eased) * width_ * unit;
}

void SheetsState::pointAt(const ReadyJob& job, const model::Vec3& place) {
  entry.pointAt(job, place);
  const ReadingField next = entry.lacking();
  readingFocus.goTo(int(next == ReadingField::None ? ReadingField::Value : next));
}

bool SheetsState::enter() {
  if (typesReading()) return readingFocus.enter(), true;
  if (shown_ == Tab::Book) return bookFocus.enter(), true;
  return false;
}

bool SheetsState::tab(bool back) {
  if (typesReading()) {
    const auto in = ReadingField(readingFocus.at());
    entry.complete(in);
    readingFocus.goTo(int(entry.beside(in, back)));
    return true;
  }
  if (shown_ != Tab::Book || bookFocus.at() == 0) return false;
  book.keepEmptyRow();
  if (const int to = book.fieldBeside(bookFocus.at(), back)) bookFocus.goTo(to);
  return true;
}

bool SheetsState::moveRow(int by) {
  if (shown_ != Tab::Book || bookFocus.at() == 0) return false;
  const int to = book.fieldInRow(bookFocus.at(), by);
  if (to != 0) bookFocus.goTo(to);
  return true;
}

bool SheetsState::backOut() {
  if (shown_ == Tab::Book && bookFocus.at() != 0) return bookFocus.leave(), true;
  if (!typesReading()) return false;
  entry.close();
  readingFocus.leave();
  return true;
}

std::vector<std::string> SheetsState::texts() const {
  std::vector<std::string> texts = entry.texts();
  for (const std::string& text : book.texts()) texts.push_back(text);
  return texts;
}

Box tabBox(const SheetLayout& layout, float unit, int index) {
  // Each as long as its word wants, all of them within the room there is.
  const auto wish = [](int i) {
    const float mark = Tab(i + 1) == Tab::Problems ? 20 : 0;  // room for the sign of warning
    return float(std::strlen(nameOf(Tab(i + 1)))) * 8.6f + 26 + mark;
  };
  float total = 0, before = 0;
  for (int i = 0; i < kTabCount; ++i) {
    if (i < index) before += wish(i);
    total += wish(i);
  }
  const float scale = std::min(unit, layout.tabs.height() / total);
  const float top = layout.tabs.top + before * scale;
  return {0, top, layout.tabs.right, top + wish(index) * scale - 4 * unit};
}

void drawSheets(SheetsState& sheets, SheetsInput& input) {
  if (!input.job && !input.reading && !input.problems.empty()) drawEmptySheet(input);
  if (sheets.shown() != Tab::None) drawSheet(sheets, input);
  drawTabs(input);
  if (input.reading)
    drawNotice(input, "Reading the job file ...", false);
  else if (input.gone)
    drawNotice(input,
               input.job ? "The job file is gone from disk; what you see is the last good one"
                         : "The job file is gone from disk",
               true);
  else if (input.job && sheets.shown() != Tab::Book && sheets.book.unsaved())
    drawNotice(input, "The level book is not saved; K brings it back", false);
}

}  // namespace viewer
