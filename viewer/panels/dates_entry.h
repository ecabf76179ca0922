// What a hand does to the chart of dates, and what it has changed.
#pragma once

#include <optional>
#include <string>

#include "viewer/panels/change_stage.h"
#include "viewer/panels/dates_layout.h"
#include "viewer/panels/delivery_days.h"

namespace viewer {

enum class DatesSpan { Whole, EightWeeks, ThreeWeeks };
// A bar whose end is pulled, a stage that is moved up or down, or a delivery to another day.
enum class DatesDrag { None, End, Stage, Delivery };

struct DatesEntry {
  DatesSpan span = DatesSpan::Whole;
  DatesDrag drag = DatesDrag::None;
  size_t dragged = 0;     // the stage
  DeliveryMark delivery;  // or the delivery
  std::optional<SavedChange> undo;
  std::string notice;  // what was changed, or why not
  bool noticeWarns = false;
  int shown = -1;  // the stage that was last brought into view

  // The end of a bar lets go at so many days, or a stage after another; both write the file. True
  // when it was changed.
  bool setDays(const std::string& path, const model::Model& model, size_t stage, double days);
  bool setFollows(const std::string& path, const model::Model& model, size_t stage, size_t host);
  // A delivery lets go over a day. One that would come after its stage begins is refused.
  bool setDelivery(const std::string& path, const model::Model& model, const DeliveryMark& mark,
                   long day);
  bool takeBack(const std::string& path);

 private:
  bool taken(const ChangedStage& change, const std::string& what);
};

}  // namespace viewer
