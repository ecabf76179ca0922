// The line in which a reading is typed.
#include <imgui.h>

#include <array>
#include <ctime>

#include "viewer/fonts.h"
#include "viewer/overlays/words.h"
#include "viewer/panels/names_like.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"
#include "viewer/reading_order.h"

namespace viewer {
namespace {

using model::ReadingKind;

constexpr std::array<const char*, 6> kKindWords{"level",  "staff reading", "face",
                                                "corner", "side",          "diagonal"};

std::string nameAndDay(const model::ReadingSet& set) {
  return set.name + (set.date.empty() ? "" : ", " + dateWords(set.date));
}

// The computer's own day, for a set that is started now.
std::string today() {
  const std::time_t now = std::time(nullptr);
  std::tm day{};
  localtime_r(&now, &day);
  char text[16];
  std::strftime(text, sizeof text, "%Y-%m-%d", &day);
  return text;
}

const char* labelOf(ReadingField field, ReadingKind kind) {
  switch (field) {
    case ReadingField::SetName:
      return "name of the new set";
    case ReadingField::Date:
      return "day";
    case ReadingField::By:
      return "read by";
    case ReadingField::Target:
      return "what";
    case ReadingField::Point:
      return kind == ReadingKind::Face || kind == ReadingKind::Side ? "wall"
             : kind == ReadingKind::Diagonal                        ? "corners"
             : kind == ReadingKind::Corner                          ? "corner"
                                                                    : "point";
    case ReadingField::Along:
      return "along, mm";
    case ReadingField::X:
      return "x, mm";
    case ReadingField::Y:
      return "y, mm";
    case ReadingField::Value:
      return kind == ReadingKind::Level   ? "level, m"
             : kind == ReadingKind::Staff ? "on staff, m"
             : kind == ReadingKind::Face  ? "outside, mm"
                                          : "tape, mm";
    case ReadingField::Note:
      return "note";
    default:
      return "photo's file";
  }
}

// One frame of the line.
class Form {
 public:
  Form(SheetsState& sheets, SheetsInput& input)
      : sheets_(sheets), input_(input), entry_(sheets.entry), focus_(sheets.readingFocus) {}

  void draw() {
    entry_.refer(*input_.job, input_.path);
    focus_.begin();
    setChoice();
    if (entry_.isNew()) {
      fields({ReadingField::SetName}, {1});
      fields({ReadingField::Date, ReadingField::By}, {1, 1.4f});
    }
    kindChoice();
    if (entry_.kind() == ReadingKind::Staff) setUpChoice();
    place();
    suggestions();
    fields({ReadingField::Note, ReadingField::Photo}, {1.5f, 1});
    focus_.end();
    if (focus_.takeEnter()) enter(ReadingField(focus_.at()));
    entry_.refer(*input_.job, input_.path);
    said();
    buttons();
  }

 private:
  const model::Job& job() const { return input_.job->model.job; }

  void setChoice() {
    const auto now = entry_.set(job());
    const std::string words = now ? nameAndDay(job().readings[*now]) : "a new set";
    ImGui::SetNextItemWidth(-1);
    const float room = ImGui::GetContentRegionAvail().x - ImGui::GetFrameHeight() * 2;
    if (!ImGui::BeginCombo("##into", shortenedWords("Into: " + words, room).c_str())) return;
    for (size_t i = 0; i < job().readings.size(); ++i) {
      ImGui::PushID(int(i));
      if (ImGui::Selectable(asSeen(setWords(job().readings[i])).c_str(), now == i)) {
        entry_.chooseSet(job(), i);
        focus_.goTo(int(ReadingField::Point));
      }
      ImGui::PopID();
    }
    if (ImGui::Selectable("a new set", !now)) {
      entry_.startSet(today());
      focus_.goTo(int(ReadingField::SetName));
    }
    ImGui::EndCombo();
  }

  void kindChoice() {
    const ReadingKind now = entry_.kind();
    ImGui::SetNextItemWidth(ImGui::GetContentRegionAvail().x * 0.4f);
    if (ImGui::BeginCombo("##kind", kKindWords.at(size_t(now)))) {
      for (size_t i = 0; i < kKindWords.size(); ++i) {
        // A staff is read from a set-up of the job.
        const bool can = ReadingKind(i) != ReadingKind::Staff || !job().setUps.empty();
        const auto flags = can ? ImGuiSelectableFlags_None : ImGuiSelectableFlags_Disabled;
        const std::string words =
            std::string(kKindWords.at(i)) + (can ? "" : ": no set-up in the job");
        if (ImGui::Selectable(words.c_str(), size_t(now) == i, flags)) {
          entry_.chooseKind(ReadingKind(i), job());
          focus_.goTo(int(entry_.text(ReadingField::Target).empty() ? ReadingField::Target
                                                                    : ReadingField::Point));
        }
      }
      ImGui::EndCombo();
    }
    ImGui::SameLine();
    field(ReadingField::Target, "of what?", ImGui::GetContentRegionAvail().x);
  }

  void setUpChoice() {
    ImGui::SetNextItemWidth(-1);
    const float room = ImGui::GetContentRegionAvail().x - ImGui::GetFrameHeight() * 2;
    const std::string now = shortenedWords("from set-up " + entry_.setUp(), room);
    if (!ImGui::BeginCombo("##set-up", now.c_str())) return;
    for (size_t i = 0; i < job().setUps.size(); ++i) {
      const model::SetUp& each = job().setUps[i];
      ImGui::PushID(int(i));
      const std::string day = each.date.empty() ? "" : ", " + dateWords(each.date);
      if (ImGui::Selectable(asSeen(each.name + day).c_str(), each.name == entry_.setUp()))
        entry_.chooseSetUp(each.name);
      ImGui::PopID();
    }
    ImGui::EndCombo();
  }

  // Fields beside each other, a word over each, their widths in shares of the line.
  void fields(const std::vector<ReadingField>& which, const std::vector<float>& shares) {
    const float gap = ImGui::GetStyle().ItemSpacing.x * 0.6f;
    float all = 0;
    for (const float share : shares) all += share;
    const float room = ImGui::GetContentRegionAvail().x - gap * float(which.size() - 1);
    ImVec2 at = ImGui::GetCursorPos();
    const float under = at.y + ImGui::GetTextLineHeight() + letteringNow().unit * 2;
    for (size_t i = 0; i < which.size(); ++i) {
      const float width = room * shares[i] / all;
      ImGui::SetCursorPos(at);
      ImGui::TextDisabled("%s", labelOf(which[i], entry_.kind()));
      ImGui::SetCursorPos({at.x, under});
      field(which[i], "", width);
      at.x += width + gap;
    }
  }

  void field(ReadingField which, const char* hint, float width) {
    bool left = false;
    if (focus_.field(int(which), hint, entry_.text(which), width, left)) entry_.touched();
    if (left) entry_.complete(which);
  }

  // Where it was read, and what.
  void place() {
    std::vector<ReadingField> which{ReadingField::Point};
    std::vector<float> shares{1.5f};
    for (const ReadingField more :
         {ReadingField::Along, ReadingField::X, ReadingField::Y, ReadingField::Value}) {
      if (!entry_.needs(more)) continue;
      which.push_back(more);
      shares.push_back(1);
    }
    fields(which, shares);
  }

  // The names that the field typed into last may mean, as many as go on one line.
  void suggestions() {
    const auto which = ReadingField(focus_.at());
    const std::string typed = entry_.text(which);
    const auto names = namesLike(entry_.namesFor(which), typed);
    const float line = ImGui::GetTextLineHeightWithSpacing();
    const ImVec2 from = ImGui::GetCursorPos();
    float room = ImGui::GetContentRegionAvail().x;
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    for (size_t i = 0; i < names.size() && !(names.size() == 1 && names[0] == typed); ++i) {
      const std::string words = asSeen(names[i]);
      const float width = ImGui::CalcTextSize(words.c_str()).x + gap;
      const bool last = i + 1 == names.size();
      if (width + (last ? 0 : gap * 2) > room && i > 0) {
        ImGui::TextDisabled("...");
        break;
      }
      ImGui::PushID(int(i));
      if (ImGui::Selectable(shortenedWords(words, room - gap).c_str(), false, 0,
                            {std::min(width, room), 0}))
        take(which, names[i]);
      ImGui::PopID();
      ImGui::SameLine(0, 0);
      room -= width;
    }
    // The line is kept for them, so that nothing jumps.
    ImGui::SetCursorPos({from.x, from.y + line});
  }

  void take(ReadingField which, const std::string& name) {
    entry_.text(which) = name;
    entry_.complete(which);
    entry_.touched();
    const ReadingField next = entry_.lacking();
    focus_.goTo(int(next == ReadingField::None ? ReadingField::Value : next));
  }

  void enter(ReadingField in) {
    bool saved = false;
    const ReadingField next = entry_.enter(in, *input_.job, input_.path, saved);
    sheets_.saved = sheets_.saved || saved;
    if (saved) input_.state.overlays.readings = true;
    focus_.goTo(int(next));
  }

  // What the drawing says there, and what the reading is worth.
  void said() {
    const ReadingPreview& preview = entry_.preview();
    ImGui::BeginChild("said", {0, ImGui::GetTextLineHeightWithSpacing() * 3});
    if (!preview.drawn.empty()) quietWords(preview.drawn);
    if (preview.held) heldWords(*preview.held);
    const std::string& wrong = entry_.problem().empty() ? preview.wrong : entry_.problem();
    if (!wrong.empty()) cautionWords(wrong);
    // Not while its name is still being typed.
    if (wrong.empty() && focus_.at() != int(ReadingField::Point) && !preview.wrongPoint.empty())
      cautionWords(preview.wrongPoint);
    for (const std::string& words : preview.lookAt) wrappedWords(words);
    ImGui::EndChild();
  }

  static void heldWords(const model::Deviation& held) {
    const std::string words =
        held.kind == model::ReadingKind::Level ? "level " + model::levelText(held.read) + ": " : "";
    if (held.verdict == model::Verdict::Out)
      cautionWords(words + held.words);
    else
      boldWords(words + held.words);
  }

  void buttons() {
    if (ImGui::Button("Write down")) enter(ReadingField(focus_.at()));
    ImGui::SameLine();
    if (ImGui::Button("Done")) sheets_.backOut();
    if (entry_.written().empty()) return;
    ImGui::SameLine();
    const std::string words = "Take back: " + entry_.written().back().words;
    const float room = ImGui::GetContentRegionAvail().x - ImGui::GetStyle().FramePadding.x * 2;
    if (ImGui::Button((shortenedWords(words, room) + "##back").c_str()) && entry_.takeLastBack()) {
      sheets_.saved = true;
      focus_.goTo(int(ReadingField::Point));
    }
  }

  SheetsState& sheets_;
  SheetsInput& input_;
  ReadingEntry& entry_;
  TypingFocus& focus_;
};

}  // namespace

void beginReading(SheetsState& sheets, ViewState& state, const ReadyJob& job,
                  const std::string& path) {
  state.tab = Tab::Readings;
  sheets.entry.begin(job.model.job, state.readingSet, today());
  sheets.entry.refer(job, path);
  const ReadingField first = sheets.entry.lacking();
  sheets.readingFocus.goTo(int(first == ReadingField::None ? ReadingField::Point : first));
}

void readingForm(SheetsState& sheets, SheetsInput& input) { Form(sheets, input).draw(); }

}  // namespace viewer
