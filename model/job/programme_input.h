// What the job says of the programme: the calendar, and what is different about stages. Part of
// Job; units as there. Stages are named as Programme::find() takes them: by key, number or name.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/vec.h"

namespace model {

// What the job says otherwise about a stage.
struct StageOverride {
  std::string stage;
  std::optional<std::string> name;
  std::optional<double> days;      // working days
  std::optional<double> perDay;    // or output: of what the stage is counted in, in a working day
  std::optional<double> waitDays;  // after it, calendar days
  std::optional<std::string> crew;
  std::optional<std::string> holdPoint;
  std::optional<std::string> note;
  std::optional<std::string> follows;  // it is taken straight after that stage
  std::optional<std::string> with;     // it is done as the end of that stage, and is none by itself
  std::string started, finished;       // really; dates
  std::optional<double> percent;       // done by now
  // For the client.
  std::optional<std::string> notice;    // what will be noticed: noise, lorries, no kitchen
  std::optional<std::string> decision;  // what must be decided before it
};

// Walls whose share of a stage is a stage of its own, straight after what is left of it.
struct StageSplit {
  std::string stage;
  std::string walls;  // "A-B, B-C"
  std::string name;
};

// Work that the model has no pieces for: drains, first fix, plaster.
struct OwnStage {
  std::string name;
  std::string follows;
  double days = 1;
};

enum class LinkKind { FinishStart, StartStart, FinishFinish, StartFinish };
enum class LagKind { Working, Calendar };

// One more relation between two stages.
struct StageLink {
  std::string from, to;
  LinkKind kind = LinkKind::FinishStart;
  double lag = 0;  // days; negative is a lead
  LagKind lagIn = LagKind::Working;
};

// Dates on which the week does not count: holidays, short days, a Saturday worked.
struct CalendarException {
  std::string from;
  std::string to;    // the last of them; empty: that one day
  double hours = 0;  // worked on each
  std::string name;
};

// What is usual in a month.
struct UsualMonth {
  int month = 1;                      // 1 to 12
  std::optional<double> temperature;  // mean of the air, degrees Celsius; curing waits go by it
  double lostDays = 0;                // working days lost to weather
};

struct Delivery {
  std::string what;
  std::string stage;
  double daysBefore = 0;  // working days before the stage starts
};

enum class ViewProjection { Perspective, Parallel };

// What is taken away in front of a plane of the section, so that one sees in.
enum class CutAway { Nothing, West, East, South, North, Above };

enum class SeeThrough { Nothing, Ground, Others };  // others: all but the stage's own work

// From where a stage is looked at, instead of from where the program would.
struct KeptView {
  std::string stage;
  Vec2 eye{0, 0};
  double eyeLevel = 0;
  Vec2 target{0, 0};  // in the middle of what is seen
  double targetLevel = 0;
  ViewProjection projection = ViewProjection::Perspective;
  CutAway cutAway = CutAway::Nothing;
  std::optional<double> cutAt;     // of upright planes: x for west and east, y for south and north
  std::optional<double> cutLevel;  // of the level one
  SeeThrough seeThrough = SeeThrough::Nothing;
};

struct ProgrammeInput {
  std::string start;                                // "2026-04-13"; empty: no dates are shown
  std::array<double, 7> week{8, 8, 8, 8, 8, 0, 0};  // hours worked, Monday first
  double fullDay = 8;                               // hours that count as one working day
  std::vector<CalendarException> exceptions;
  std::vector<UsualMonth> months;
  std::vector<StageOverride> stages;
  std::vector<StageSplit> splits;
  std::vector<OwnStage> ownStages;
  std::vector<StageLink> links;
  std::vector<Delivery> deliveries;
  std::vector<KeptView> views;
};

}  // namespace model
