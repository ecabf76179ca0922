// The sheet of dates: the stages over time, to be looked at, pulled and moved.
#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "model/exchange/programme_tables.h"
#include "model/exchange/site_events.h"
#include "model/programme/calendar.h"
#include "viewer/overlays/pen.h"
#include "viewer/overlays/words.h"
#include "viewer/panels/change_job_file.h"
#include "viewer/panels/sheet_pages.h"
#include "viewer/panels/sheet_words.h"
#include "viewer/reading_order.h"

namespace viewer {
namespace {

constexpr float kRow = 24, kHeader = 44, kReach = 6;  // units
constexpr std::array<const char*, 12> kMonths{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                              "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

class Chart {
 public:
  Chart(SheetsState& sheets, SheetsInput& input)
      : entry_(sheets.dates),
        saved_(sheets.saved),
        input_(input),
        programme_(input.job->model.programme),
        chart_(datesChart(programme_)),
        deliveries_(deliveryMarks(input.job->model)),
        unit_(letteringNow().unit) {}

  void draw() {
    controls();
    if (chart_.rows.empty()) return;
    const float below = ImGui::GetTextLineHeightWithSpacing() * 2.8f;
    ImGui::BeginChild("chart", {0, -below}, false, ImGuiWindowFlags_HorizontalScrollbar);
    place();
    bringIntoView();
    ImGui::SetCursorPos({0, 0});
    ImGui::InvisibleButton("days", {names_ + span() * scale_.perDay, bodyHeight()});
    hand();
    paint();
    ImGui::EndChild();
    key();
  }

 private:
  float span() const { return float(chart_.last - chart_.first) + 2; }
  float rowHeight() const { return kRow * unit_; }
  float bodyHeight() const {
    return kHeader * unit_ + float(chart_.rows.size()) * rowHeight() + 8 * unit_;
  }
  float rowTop(size_t i) const { return origin_.y + kHeader * unit_ + float(i) * rowHeight(); }

  void controls() {
    static constexpr std::array<const char*, 3> kNames{"All of it", "Eight weeks", "Three weeks"};
    for (int i = 0; i < 3; ++i) {
      if (i > 0) ImGui::SameLine();
      if (ImGui::RadioButton(kNames[size_t(i)], int(entry_.span) == i)) {
        entry_.span = DatesSpan(i);
        entry_.shown = -1;
      }
    }
    if (!entry_.undo) return;
    ImGui::SameLine();
    if (ImGui::Button("Take the change back")) saved_ = entry_.takeBack(input_.path) || saved_;
  }

  void place() {
    names_ = std::min(300 * unit_, ImGui::GetWindowWidth() * 0.4f);
    const float room = ImGui::GetWindowWidth() - names_ - ImGui::GetStyle().ScrollbarSize;
    const float days = entry_.span == DatesSpan::Whole        ? span()
                       : entry_.span == DatesSpan::EightWeeks ? 56.0f
                                                              : 21.0f;
    const ImVec2 at = ImGui::GetWindowPos();
    window_ = {at.x, at.y, at.x + ImGui::GetWindowWidth(), at.y + ImGui::GetWindowHeight()};
    origin_ = {at.x - ImGui::GetScrollX(), at.y - ImGui::GetScrollY()};
    scale_.first = chart_.first - 1;
    scale_.perDay = std::max(room / days, 0.5f);
    scale_.left = origin_.x + names_;
  }

  // The stage that plays stays in sight; a hand on the scroll bars is left alone until the next.
  void bringIntoView() {
    const int now = input_.frame.stage;
    if (entry_.shown == now || entry_.drag != DatesDrag::None) return;
    entry_.shown = now;
    const float y = kHeader * unit_ + float(now) * rowHeight();
    const float height = ImGui::GetWindowHeight();
    if (y < ImGui::GetScrollY() + kHeader * unit_ ||
        y + 2 * rowHeight() > ImGui::GetScrollY() + height)
      ImGui::SetScrollY(std::max(0.0f, y - height / 2));
    const float x = float(chart_.rows[size_t(now)].start - scale_.first) * scale_.perDay;
    const float room = ImGui::GetWindowWidth() - names_;
    if (x < ImGui::GetScrollX() || x > ImGui::GetScrollX() + room * 0.8f)
      ImGui::SetScrollX(std::max(0.0f, x - room * 0.2f));
  }

  // The stage at a height; past the last when there is none.
  size_t rowUnder(float y) const {
    const float row = (y - rowTop(0)) / rowHeight();
    return row < 0 ? chart_.rows.size() : size_t(row);
  }

  void hand() {
    const ImVec2 mouse = ImGui::GetIO().MousePos;
    const bool pressed = ImGui::IsMouseClicked(ImGuiMouseButton_Left);
    if (entry_.drag != DatesDrag::None) {
      if (ImGui::IsMouseReleased(ImGuiMouseButton_Left)) letGo();
      return;
    }
    if (!ImGui::IsItemHovered() || mouse.y <= window_.top + kHeader * unit_) return;
    const size_t row = rowUnder(mouse.y);
    if (row >= chart_.rows.size()) return;
    const bool mayChange = canChange(input_.path);
    if (const DeliveryMark* mark = deliveryUnder(mouse.x, mouse.y); mark && mayChange) {
      ImGui::SetMouseCursor(ImGuiMouseCursor_ResizeEW);
      if (pressed) {
        entry_.drag = DatesDrag::Delivery;
        entry_.delivery = *mark;
      } else {
        hover(row);
      }
      return;
    }
    const bool inNames = mouse.x < window_.left + names_;
    const BarPart part =
        inNames ? BarPart::None : partAt(chart_.rows[row], scale_, mouse.x, kReach * unit_);
    if (part == BarPart::End && mayChange) ImGui::SetMouseCursor(ImGuiMouseCursor_ResizeEW);
    if (pressed && mayChange && (inNames || part == BarPart::End)) {
      entry_.drag = inNames ? DatesDrag::Stage : DatesDrag::End;
      entry_.dragged = row;
    }
    if (pressed && (inNames || part == BarPart::Body)) goTo(row, inNames, mouse.x);
    if (!pressed) hover(row);
  }

  // The arrow under a place of the chart, with room for a hand; null when there is none.
  const DeliveryMark* deliveryUnder(float x, float y) const {
    if (x < window_.left + names_) return nullptr;
    for (const DeliveryMark& mark : deliveries_) {
      const float top = rowTop(mark.stage);
      if (y >= top && y < top + 0.6f * rowHeight() &&
          std::abs(x - scale_.xOf(double(mark.day) + 0.5)) <= kReach * unit_)
        return &mark;
    }
    return nullptr;
  }

  void goTo(size_t row, bool whole, float x) {
    entry_.shown = int(row);
    input_.playback.goTo(whole ? double(row) + 1
                               : timeOnBar(chart_.rows[row], row, scale_.dayAt(x)));
  }

  double pulledDays() const {
    return daysWhenPulled(programme_, entry_.dragged, chart_,
                          scale_.dayAt(ImGui::GetIO().MousePos.x));
  }
  long dayUnderHand() const { return long(std::floor(scale_.dayAt(ImGui::GetIO().MousePos.x))); }
  // Where a stage that is moved would go: between two rows, by the upper one.
  std::optional<size_t> host() const {
    const float row = (ImGui::GetIO().MousePos.y - rowTop(0)) / rowHeight();
    const long upper = std::lround(row) - 1;
    if (upper < 0 || upper >= long(chart_.rows.size())) return std::nullopt;
    return size_t(upper);
  }

  void letGo() {
    const auto& model = input_.job->model;
    if (entry_.drag == DatesDrag::End)
      saved_ = entry_.setDays(input_.path, model, entry_.dragged, pulledDays()) || saved_;
    else if (entry_.drag == DatesDrag::Delivery)
      saved_ = entry_.setDelivery(input_.path, model, entry_.delivery, dayUnderHand()) || saved_;
    else if (const auto upper = host(); upper && *upper != entry_.dragged)
      saved_ = entry_.setFollows(input_.path, model, entry_.dragged, *upper) || saved_;
    entry_.drag = DatesDrag::None;
  }

  std::string dateOf(long day) const {
    return chart_.dated ? dateWords(model::isoDate(day)) : "day " + std::to_string(day + 1);
  }

  void hover(size_t i) const {
    const model::Stage& stage = programme_.stages[i];
    const DatesRow& row = chart_.rows[i];
    std::string text = std::to_string(i + 1) + "  " + stage.name + "\n" + dateOf(row.start);
    if (row.finish - row.start > 1) text += " to " + dateOf(row.finish - 1);
    text +=
        "\n" + model::daysText(stage.days) + (stage.days == 1 ? " day, " : " days, ") + stage.crew;
    if (stage.waitDays > 0) text += "\nthen " + model::daysText(stage.waitDays) + " to wait";
    text += stage.critical ? "\ncritical: a day lost here is a day lost at the end"
                           : "\nmay slip " + model::daysText(std::round(stage.floatDays * 2) / 2) +
                                 " days without moving the end";
    if (stage.percent > 0) text += "\n" + model::daysText(stage.percent) + " % done";
    for (const model::SiteEvent& event : model::siteEvents(input_.job->model))
      if (event.stage == i) text += "\n" + std::string(nameOf(event.kind)) + ": " + event.text;
    if (!stage.note.empty()) text += "\n" + stage.note;
    ImGui::BeginTooltip();
    ImGui::PushTextWrapPos(420 * unit_);
    ImGui::TextUnformatted(asSeen(text).c_str());
    ImGui::PopTextWrapPos();
    ImGui::EndTooltip();
  }

  // ---- drawing ----

  void paint() {
    ImDrawList* list = ImGui::GetWindowDrawList();
    const Pen pen(list);
    const Box days{window_.left + names_, window_.top + kHeader * unit_, window_.right,
                   window_.bottom};
    list->PushClipRect({days.left, window_.top}, {days.right, days.bottom}, true);
    offDays(pen, days);
    months(pen);
    list->PushClipRect({days.left, days.top}, {days.right, days.bottom}, true);
    for (size_t i = 0; i < chart_.rows.size(); ++i) bar(pen, i);
    events(pen);
    now(pen, days);
    list->PopClipRect();
    list->PopClipRect();
    list->PushClipRect({window_.left, days.top}, {window_.right, days.bottom}, true);
    for (size_t i = 0; i < chart_.rows.size(); ++i) name(pen, i);
    moved(pen);
    list->PopClipRect();
    pen.line({window_.left, days.top}, {window_.right, days.top}, ink::kInk, 1);
    pen.line({days.left, window_.top}, {days.left, window_.bottom}, ink::kFaint, 1);
  }

  void offDays(const Pen& pen, const Box& days) const {
    const auto start = model::dayNumber(input_.job->model.job.programme.start);
    if (!chart_.dated || !start) return;
    const model::WorkCalendar calendar(input_.job->model.job.programme, *start);
    for (long day = chart_.first; day < chart_.last; ++day) {
      if (calendar.capacityOf(day) > 0) continue;
      const float x = scale_.xOf(double(day));
      if (x + scale_.perDay < days.left || x > days.right) continue;
      pen.fill({x, days.top, x + scale_.perDay, days.bottom}, ink::kFaint, 0.28f);
    }
  }

  void months(const Pen& pen) const {
    const float top = window_.top + 2 * unit_, second = top + pen.lineHeight() + 1 * unit_;
    float used = -1e9f, usedBelow = -1e9f;
    for (long day = scale_.first; day <= chart_.last; ++day) {
      const float x = scale_.xOf(double(day));
      if (x > window_.right) break;
      const std::string iso = chart_.dated ? model::isoDate(day) : "";
      const bool monday = chart_.dated ? model::weekdayOf(day) == 0 : day % 5 == 0;
      const bool month = chart_.dated && (iso.ends_with("-01") || day == scale_.first);
      if (month) {
        std::string words = kMonths[size_t(model::monthOf(day) - 1)];
        // With its year where there is room before the next month.
        const std::string whole = words + " " + iso.substr(0, 4);
        const float room = float(32 - std::stoi(iso.substr(8))) * scale_.perDay;
        if (room > pen.size(whole, Cut::Bold).x + 12 * unit_) words = whole;
        const float at = std::max(x + 3 * unit_, window_.left + names_ + 3 * unit_);
        if (at > used) {
          pen.text({at, top}, ink::kInk, words, Cut::Bold);
          used = at + pen.size(words, Cut::Bold).x + 8 * unit_;
        }
      }
      if (!monday) continue;
      pen.line({x, second}, {x, window_.bottom}, ink::kFaint, 1, 0.7f);
      const std::string number =
          chart_.dated ? std::to_string(std::stoi(iso.substr(8))) : std::to_string(day + 1);
      if (x + 3 * unit_ < usedBelow) continue;
      pen.text({x + 3 * unit_, second}, ink::kSoft, number);
      usedBelow = x + 3 * unit_ + pen.size(number).x + 6 * unit_;
    }
  }

  void bar(const Pen& pen, size_t i) const {
    const DatesRow& row = chart_.rows[i];
    const model::Stage& stage = programme_.stages[i];
    const float top = rowTop(i) + 5 * unit_, bottom = rowTop(i) + rowHeight() - 6 * unit_;
    if (bottom < window_.top || top > window_.bottom) return;
    const float from = scale_.xOf(double(row.start)), middle = (top + bottom) / 2;
    const bool pulled = entry_.drag == DatesDrag::End && entry_.dragged == i;
    float to = scale_.xOf(double(row.finish));
    if (pulled) to = std::max(ImGui::GetIO().MousePos.x, from + 2 * unit_);
    // How far it may slip, and the wait for curing.
    const float late = scale_.xOf(double(row.lateFinish));
    if (late > to + 1 && stage.floatDays >= 0.25) {
      pen.line({to, middle}, {late, middle}, ink::kInk, 1.2f);
      pen.line({late, middle - 4 * unit_}, {late, middle + 4 * unit_}, ink::kInk, 1.2f);
    }
    if (row.wait > row.finish && !pulled)
      pen.hatch({to, top + 3 * unit_, scale_.xOf(double(row.wait)), bottom - 3 * unit_}, ink::kInk,
                5 * unit_, 0.55f);
    const Box box{from, top, to, bottom};
    pen.fill(box, ink::kTape);
    if (stage.percent > 0)
      pen.fill({from, top, from + (to - from) * float(stage.percent) / 100, bottom}, ink::kSoft,
               0.75f);
    pen.outline(box, ink::kInk, stage.critical ? 2.2f : 1);
    if (stage.critical)
      pen.line({from, bottom + 2 * unit_}, {to, bottom + 2 * unit_}, ink::kInk, 2);
    if (!stage.holdPoint.empty())
      pen.diamond({to + 6 * unit_, middle}, 4.5f * unit_, ink::kCard, ink::kInk);
    if (pulled) {
      const double days = pulledDays();
      pen.haloText({to + 10 * unit_, top - 2 * unit_}, ink::kInk,
                   model::daysText(days) + (days == 1 ? " day" : " days"), Cut::Bold);
    }
  }

  void arrow(const Pen& pen, size_t row, double day, bool down) const {
    const float x = scale_.xOf(day + 0.5), top = rowTop(row) + 1 * unit_, r = 4 * unit_;
    const float tip = down ? top + 2 * r : top, base = down ? top : top + 2 * r;
    pen.list()->AddTriangleFilled({x, tip}, {x - r, base}, {x + r, base}, colour(ink::kInk));
  }

  // Deliveries as arrows down onto the row of their stage, muck-away as arrows up out of it.
  void events(const Pen& pen) const {
    if (!chart_.dated) return;
    for (const model::SiteEvent& event : model::siteEvents(input_.job->model))
      if (event.kind == model::SiteEventKind::MuckAway)
        arrow(pen, event.stage, double(model::dayNumber(event.date).value_or(0)), false);
    const bool pulling = entry_.drag == DatesDrag::Delivery;
    for (const DeliveryMark& mark : deliveries_)
      if (!pulling || mark.delivery != entry_.delivery.delivery)
        arrow(pen, mark.stage, double(mark.day), true);
    if (pulling) pulledDelivery(pen);
  }

  // Over the day that it would come on, or, where it cannot, under the hand with a cross.
  void pulledDelivery(const Pen& pen) const {
    const DeliveryMark& mark = entry_.delivery;
    const long day = dayUnderHand();
    std::string why;
    const auto days = daysBeforeOn(input_.job->model, mark, day, why);
    const long shown = days ? deliveryDay(input_.job->model, mark.stage, *days) : day;
    arrow(pen, mark.stage, double(shown), true);
    const float x = scale_.xOf(double(shown) + 0.5), top = rowTop(mark.stage);
    if (!days) {
      const float r = 6 * unit_, y = top + 5 * unit_;
      pen.line({x - r, y - r}, {x + r, y + r}, ink::kInk, 2);
      pen.line({x - r, y + r}, {x + r, y - r}, ink::kInk, 2);
    }
    pen.haloText({x + 10 * unit_, top - 2 * unit_}, ink::kInk,
                 days             ? dateWords(model::isoDate(shown))
                 : day > mark.day ? "too late"
                                  : "too early",
                 Cut::Bold);
  }

  void now(const Pen& pen, const Box& days) const {
    const double time = input_.frame.time;
    const size_t i = std::min(size_t(std::max(input_.frame.stage, 0)), chart_.rows.size() - 1);
    const DatesRow& row = chart_.rows[i];
    const double within = std::clamp(time - double(i), 0.0, 1.0);
    const float x = scale_.xOf(double(row.start) + within * double(row.finish - row.start));
    pen.line({x, days.top}, {x, days.bottom}, ink::kInk, 1.5f);
  }

  void name(const Pen& pen, size_t i) const {
    const float top = rowTop(i);
    if (top + rowHeight() < window_.top || top > window_.bottom) return;
    const bool current = int(i) == input_.frame.stage;
    const Box box{window_.left, top, window_.left + names_, top + rowHeight()};
    pen.fill(box, current ? ink::kTape : ink::kCard);
    const Cut cut = current ? Cut::Bold : Cut::Text;
    const std::string text = std::to_string(i + 1) + "  " + programme_.stages[i].name;
    pen.text({box.left + 4 * unit_, top + 3 * unit_}, ink::kInk,
             pen.shortened(asSeen(text), names_ - 10 * unit_, cut), cut);
    pen.line({window_.left, box.bottom}, {window_.right, box.bottom}, ink::kFaint, 1, 0.5f);
  }

  void moved(const Pen& pen) const {
    if (entry_.drag != DatesDrag::Stage) return;
    const auto upper = host();
    if (!upper || *upper == entry_.dragged || *upper + 1 == entry_.dragged) return;
    const float y = rowTop(*upper + 1);
    pen.line({window_.left, y}, {window_.right, y}, ink::kInk, 2.5f);
    pen.diamond({window_.left + 6 * unit_, y}, 5 * unit_, ink::kInk, ink::kInk);
  }

  void key() const {
    if (!entry_.notice.empty()) {
      entry_.noticeWarns ? cautionWords(entry_.notice) : boldWords(entry_.notice);
      return;
    }
    quietWords(
        "Thick and underlined: critical. Thin line behind a bar: how far it may slip. Hatched: "
        "waiting for curing. Diamond: hold point. Arrow down: delivery; up: muck away. Pull the "
        "end of a bar to change its days, a name to move its stage, a delivery to another day: the "
        "job file is changed.");
  }

  DatesEntry& entry_;
  bool& saved_;
  SheetsInput& input_;
  const model::Programme& programme_;
  const DatesChart chart_;
  const std::vector<DeliveryMark> deliveries_;
  const float unit_;
  float names_ = 0;
  Box window_;
  glm::vec2 origin_{0, 0};
  DatesScale scale_;
};

}  // namespace

void datesPage(SheetsState& sheets, SheetsInput& input) { Chart(sheets, input).draw(); }

}  // namespace viewer
