// The sheet of the level book, typed row by row.
#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <vector>

#include "model/level_text.h"
#include "model/levelling/book_words.h"
#include "model/levelling/staff_text.h"
#include "viewer/fonts.h"
#include "viewer/overlays/pen.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"
#include "viewer/reading_order.h"

namespace viewer {
namespace {

using model::BookColumn;
using model::WorkedRow;
using Figure = std::optional<double> WorkedRow::*;

// A column is typed into (a cell of kTypedColumns) or worked out.
struct Column {
  const char* heading = "";
  float width = 0;  // units; 0 takes what is left
  int cell = -1;
  Figure figure = nullptr;
  bool bold = false;
};

int cellOf(BookColumn column) {
  return int(std::find(model::kTypedColumns.begin(), model::kTypedColumns.end(), column) -
             model::kTypedColumns.begin());
}

std::vector<Column> columnsOf(const BookEntry& book) {
  constexpr float kSight = 54, kLevel = 70;
  const auto typed = [](const char* heading, BookColumn column, float width) {
    return Column{heading, width, cellOf(column)};
  };
  std::vector<Column> columns{typed("point", BookColumn::Point, 0),
                              typed("back", BookColumn::Backsight, kSight),
                              typed("inter", BookColumn::Intermediate, kSight),
                              typed("fore", BookColumn::Foresight, kSight)};
  if (book.method == model::BookMethod::RiseAndFall) {
    columns.push_back({"rise", 46, -1, &WorkedRow::rise});
    columns.push_back({"fall", 46, -1, &WorkedRow::fall});
  } else {
    columns.push_back({"line at", kLevel, -1, &WorkedRow::collimation});
  }
  columns.push_back({"level", kLevel, -1, &WorkedRow::level, true});
  if (book.adjust) columns.push_back({"adjusted", kLevel, -1, &WorkedRow::adjusted, true});
  columns.push_back(typed("dist", BookColumn::Distance, 44));
  columns.push_back(typed("known", BookColumn::Known, 66));
  columns.push_back(typed("remark", BookColumn::Remark, 0));
  return columns;
}

// One frame of the sheet.
class Page {
 public:
  Page(SheetsState& sheets, SheetsInput& input)
      : input_(input),
        book_(sheets.book),
        focus_(sheets.bookFocus),
        settings_(bookSettings(input.job->model.job)),
        unit_(letteringNow().unit) {}

  void draw() {
    fileLine();
    methodLine();
    placeColumns();
    focus_.begin();
    book_.keepEmptyRow();
    const model::WorkedBook worked = book_.worked(settings_);
    const float words = ImGui::GetTextLineHeightWithSpacing() * 4.2f + ImGui::GetFrameHeight();
    headings();
    ImGui::BeginChild("rows", {0, -words - ImGui::GetStyle().ItemSpacing.y * 2});
    rows(worked);
    ImGui::EndChild();
    focus_.end();
    if (focus_.takeEnter()) nextRow();
    rowButtons();
    ImGui::Separator();
    ImGui::BeginChild("sums");
    sentences(worked);
    ImGui::EndChild();
  }

 private:
  void fileLine() {
    ImGui::AlignTextToFramePadding();
    ImGui::TextUnformatted("File");
    ImGui::SameLine();
    ImGui::SetNextItemWidth(250 * unit_);
    if (ImGui::InputText("##file", &book_.file)) book_.touched();
    ImGui::SameLine();
    if (ImGui::Button("Save (Ctrl S)")) save();
    ImGui::SameLine();
    openList();
    ImGui::SameLine();
    if (ImGui::Button("New") && book_.startAnew()) focus_.goTo(BookEntry::fieldOf(0, 0));
    ImGui::SameLine();
    if (ImGui::Button("Readings")) input_.state.tab = Tab::Readings;
    if (!book_.notice().empty() && book_.noticeWarns())
      cautionWords(asSeen(book_.notice()));
    else if (!book_.notice().empty())
      wrappedWords(book_.notice());
    else if (book_.unsaved())
      boldWords("Not saved yet");
    else
      quietWords("In metres. The first row is on a mark, the last on a mark again.");
  }

  void save() {
    if (!book_.save(input_.path, settings_)) return;
    focus_.leave();
  }

  void openList() {
    ImGui::SetNextItemWidth(100 * unit_);
    if (!ImGui::BeginCombo("##open", "Open", ImGuiComboFlags_HeightLarge)) return;
    const auto names = levelBooksBeside(input_.path);
    if (names.empty()) ImGui::TextDisabled("no level book lies beside the job file");
    for (const std::string& name : names) {
      if (ImGui::Selectable(asSeen(name).c_str(), name == book_.file) &&
          book_.openFile(input_.path, name))
        focus_.leave();
    }
    ImGui::EndCombo();
  }

  void methodLine() {
    ImGui::SetNextItemWidth(250 * unit_);
    if (ImGui::BeginCombo("##method", model::methodName(book_.method).c_str())) {
      for (const auto method : {model::BookMethod::RiseAndFall, model::BookMethod::Collimation})
        if (ImGui::Selectable(model::methodName(method).c_str(), method == book_.method))
          book_.method = method;
      ImGui::EndCombo();
    }
    ImGui::SameLine();
    ImGui::Checkbox("Adjusted levels", &book_.adjust);
  }

  // Left edges and widths; the two that have words share what is left.
  void placeColumns() {
    columns_ = columnsOf(book_);
    const float gap = 4 * unit_, number = 24 * unit_;
    float fixed = number;
    for (const Column& column : columns_) fixed += column.width * unit_ + gap;
    const float bar = ImGui::GetStyle().ScrollbarSize;
    const float left = std::max(120 * unit_, ImGui::GetContentRegionAvail().x - bar - fixed);
    float x = number;
    for (const Column& column : columns_) {
      const bool point = column.cell == cellOf(BookColumn::Point);
      const float width = column.width > 0 ? column.width * unit_ : left * (point ? 0.6f : 0.4f);
      places_.push_back({x, width});
      x += width + gap;
    }
    whole_ = x;
  }

  void headings() {
    const float from = ImGui::GetCursorPosX();
    for (size_t i = 0; i < columns_.size(); ++i) {
      // Over figures at the right, as they stand.
      const float room = places_[i].width - 4 * unit_ - ImGui::CalcTextSize(columns_[i].heading).x;
      const float aside = columns_[i].figure ? std::max(0.0f, room) : 0;
      ImGui::SetCursorPosX(from + places_[i].left + aside);
      ImGui::TextDisabled("%s", columns_[i].heading);
      if (i + 1 < columns_.size()) ImGui::SameLine();
    }
  }

  void rows(const model::WorkedBook& worked) {
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {4 * unit_, 4 * unit_});
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {4 * unit_, 3 * unit_});
    for (size_t i = 0; i < book_.rows().size(); ++i) {
      ImGui::PushID(int(i));
      row(i, i < worked.rows.size() ? worked.rows[i] : WorkedRow{});
      ImGui::PopID();
    }
    ImGui::PopStyleVar(2);
  }

  bool isTyped(size_t row) const {
    return (focus_.wish() && BookEntry::rowOf(focus_.wish()) == row) ||
           (focus_.at() && BookEntry::rowOf(focus_.at()) == row);
  }

  // The row that is just being typed, before it has a sight: that it has none is no alarm yet.
  bool underHand(size_t row) const {
    if (!focus_.at() || BookEntry::rowOf(focus_.at()) != row) return false;
    const model::TypedBooking& typed = book_.rows()[row];
    return typed[BookColumn::Backsight].empty() && typed[BookColumn::Intermediate].empty() &&
           typed[BookColumn::Foresight].empty();
  }

  void row(size_t index, const WorkedRow& figures) {
    const float height = ImGui::GetFrameHeight();
    const ImVec2 at = ImGui::GetCursorPos();
    // Of a long book only what is in sight is drawn; the row typed into stays, to keep the keys.
    if (isTyped(index) || ImGui::IsRectVisible({whole_, height})) {
      if (focus_.wish() && isTyped(index)) ImGui::SetScrollHereY(0.7f);
      number(index, figures);
      for (size_t i = 0; i < columns_.size(); ++i) {
        ImGui::SetCursorPos({at.x + places_[i].left, at.y});
        cell(index, columns_[i], places_[i].width, figures);
      }
    }
    ImGui::SetCursorPos({at.x, at.y + height + ImGui::GetStyle().ItemSpacing.y});
    const float indent = columns_.empty() ? 0 : places_.front().left;
    ImGui::Indent(indent);
    for (const std::string& words : figures.wrong)
      underHand(index) ? quietWords(words) : cautionWords(words);
    for (const std::string& words : figures.unfinished) quietWords(words);
    for (const std::string& words : figures.lookAt) wrappedWords(words);
    ImGui::Unindent(indent);
  }

  // The row's number; a sign of warning where something is wrong in it.
  void number(size_t index, const WorkedRow& figures) const {
    const float height = ImGui::GetFrameHeight();
    if (!figures.wrong.empty() && !underHand(index)) {
      const Pen pen(ImGui::GetWindowDrawList());
      const ImVec2 at = ImGui::GetCursorScreenPos();
      pen.caution({at.x + 9 * unit_, at.y + height / 2}, 8 * unit_);
      return;
    }
    ImGui::AlignTextToFramePadding();
    ImGui::TextDisabled("%d", int(index) + 1);
  }

  void cell(size_t row, const Column& column, float width, const WorkedRow& figures) {
    if (column.cell >= 0) {
      bool left = false;
      std::string& text = book_.rows()[row].cells.at(size_t(column.cell));
      if (focus_.field(BookEntry::fieldOf(row, size_t(column.cell)), hint(row, column), text, width,
                       left))
        book_.touched();
      showWhole(text, width);
      return;
    }
    const auto& value = figures.*column.figure;
    if (!value) return;
    const bool level = column.figure != &WorkedRow::rise && column.figure != &WorkedRow::fall;
    const std::string text = level ? model::levelText(*value) : model::staffText(*value);
    ImGui::AlignTextToFramePadding();
    if (column.bold) ImGui::PushFont(letteringNow().bold);
    const float room = width - 4 * unit_ - ImGui::CalcTextSize(text.c_str()).x;
    ImGui::SetCursorPosX(ImGui::GetCursorPosX() + std::max(0.0f, room));
    ImGui::TextUnformatted(text.c_str());
    if (column.bold) ImGui::PopFont();
  }

  // What is too long for its field ends in dots, and is whole under the pointer.
  void showWhole(const std::string& text, float width) const {
    const bool fits = ImGui::CalcTextSize(text.c_str()).x <= width - 8 * unit_;
    if (fits || ImGui::IsItemActive()) return;
    const Pen pen(ImGui::GetWindowDrawList());
    const ImVec2 from = ImGui::GetItemRectMin(), to = ImGui::GetItemRectMax();
    const float pad = 4 * unit_;
    pen.fill({from.x, from.y, to.x, to.y}, ink::kPaper);
    pen.list()->AddRect(from, to, ImGui::GetColorU32(ImGuiCol_Border));
    pen.text({from.x + pad, from.y + pad}, ink::kInk, shortenedWords(text, width - 2 * pad));
    if (ImGui::IsItemHovered()) ImGui::SetTooltip("%s", asSeen(text).c_str());
  }

  // The level of a mark of the job, which is written down with the book.
  const char* hint(size_t row, const Column& column) {
    if (column.cell != cellOf(BookColumn::Known)) return "";
    for (const model::Mark& mark : settings_.marks) {
      if (!model::sameName(mark.name, book_.rows()[row][BookColumn::Point])) continue;
      hint_ = model::levelText(mark.level);
      return hint_.c_str();
    }
    return "";
  }

  void nextRow() {
    if (focus_.at() == 0) return;
    book_.keepEmptyRow();
    const size_t next = BookEntry::rowOf(focus_.at()) + 1;
    focus_.goTo(BookEntry::fieldOf(std::min(next, book_.rows().size() - 1), 0));
  }

  void rowButtons() {
    const size_t row = BookEntry::rowOf(focus_.at());
    const bool any = focus_.at() != 0 && row < book_.rows().size();
    ImGui::AlignTextToFramePadding();
    if (!any) {
      quietWords("Tab to the next field, Enter to the next row, Up and Down between rows.");
      return;
    }
    const std::string number = std::to_string(row + 1);
    if (ImGui::Button(("Row before " + number + "###before").c_str())) {
      book_.insertRow(row);
      focus_.goTo(BookEntry::fieldOf(row, 0));
    }
    ImGui::SameLine();
    if (ImGui::Button(("Row after " + number + "###after").c_str())) {
      book_.insertRow(row + 1);
      focus_.goTo(BookEntry::fieldOf(row + 1, 0));
    }
    ImGui::SameLine();
    if (ImGui::Button(("Take row " + number + " out###out").c_str())) {
      book_.takeOut(row);
      focus_.goTo(BookEntry::fieldOf(std::min(row, book_.rows().size() - 1), 0));
    }
    if (!book_.canPutBack()) return;
    ImGui::SameLine();
    if (ImGui::Button("Put it back")) book_.putBack();
  }

  void sentences(const model::WorkedBook& worked) const {
    const bool badly = worked.closing && !worked.closing->within();
    for (const std::string& sentence : worked.sentences) {
      if (badly && sentence.find("level it again") != std::string::npos)
        cautionWords(sentence);
      else
        wrappedWords(sentence);
    }
    if (!worked.whole && !worked.rows.empty() && book_.unsaved())
      quietWords("The sums and how the book closes stand here once every row is right.");
  }

  struct Place {
    float left = 0, width = 0;
  };

  SheetsInput& input_;
  BookEntry& book_;
  TypingFocus& focus_;
  model::BookSettings settings_;
  float unit_, whole_ = 0;
  std::vector<Column> columns_;
  std::vector<Place> places_;
  std::string hint_;
};

}  // namespace

void toggleBook(SheetsState& sheets, ViewState& state) {
  state.toggleTab(Tab::Book);
  if (state.tab != Tab::Book) return;
  sheets.bookFocus.goTo(BookEntry::fieldOf(sheets.book.rows().size() - 1, 0));
}

void bookPage(SheetsState& sheets, SheetsInput& input) { Page(sheets, input).draw(); }

}  // namespace viewer
