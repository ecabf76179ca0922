// The work on site: how it is set out, what it must keep to, where it was levelled from, and what
// was read. Rows as in key_sections_site.cpp.
#include "model/job/key_sections.h"

namespace model {

std::vector<KeySpec> surveyKeys() {
  return {
      {"site.mark", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.site.marks[i].name; }, 0, 0, "\"Nail in kerb\"",
       "What the mark is; set-ups name it", nullptr, nullptr, true},
      {"site.mark", "at", ValueKind::Point,
       [](Job& job, size_t i) -> Slot { return &job.site.marks[i].at; }, 0, 0, "[12400, -5800]",
       "Where it is on plan", nullptr, nullptr, true},
      {"site.mark", "level", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.site.marks[i].level; }, -500, 9000, "-0.860",
       "Its level", nullptr, nullptr, true},
      {"site.grid", "east", ValueKind::Metres,
       [](Job& job, size_t) -> Slot { return &job.site.grid->east; }, -1e7, 1e7, "412.500",
       "East of the drawing's [0, 0] in the site's grid"},
      {"site.grid", "north", ValueKind::Metres,
       [](Job& job, size_t) -> Slot { return &job.site.grid->north; }, -1e7, 1e7, "187.250",
       "North of the drawing's [0, 0] in the site's grid"},
      {"site.grid", "turn", ValueKind::Degrees,
       [](Job& job, size_t) -> Slot { return &job.site.grid->turn; }, -360, 360, "12",
       "Clockwise from the grid's north to the sheet's up"},
  };
}

std::vector<KeySpec> settingOutKeys() {
  return {
      {"setting_out", "board_clear", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.settingOut.boardClear; }, 0.15, 10, "1200",
       "Profile boards from the edge of the dig and its working space"},
      {"setting_out", "pin_spacing", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.settingOut.pinSpacing; }, 0.5, 10, "1800",
       "Level pins along foundations, and both ways over slabs, at most"},
      {"setting_out", "tape", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.settingOut.tape; }, 3, 200, "30000",
       "Length of the longest tape; no distance to set out is longer"},
      {"limit", "what", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.limits[i].kind; }, 0, 0, "\"boundary\"",
       "boundary and building: distance of the finished face from it; ridge and eaves: level of "
       "the "
       "covering",
       nullptr, "boundary|building|ridge|eaves", true},
      {"limit", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.limits[i].wall; }, 0, 0, "\"A-B\"",
       "Whose distance is limited", "every wall"},
      {"limit", "least", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.limits[i].least; }, 0, 100, "1000",
       "Least distance", "needed for boundary and building"},
      {"limit", "most", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.limits[i].most; }, -500, 9000, "8.200",
       "Highest level", "needed for ridge and eaves"},
      {"limit", "note", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.limits[i].note; }, 0, 0,
       "\"Permission, condition 4\"", "Where the limit comes from", "nothing"},
  };
}

std::vector<KeySpec> setUpKeys() {
  return {
      {"set_up", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.setUps[i].name; }, 0, 0, "\"1\"",
       "What the set-up is called; readings name it"},
      {"set_up", "date", ValueKind::Date,
       [](Job& job, size_t i) -> Slot { return &job.setUps[i].date; }, 0, 0, "\"2027-04-21\"",
       "The day", "not dated"},
      {"set_up", "at", ValueKind::Point,
       [](Job& job, size_t i) -> Slot { return &job.setUps[i].at; }, 0, 0, "[-2500, 4000]",
       "Where the instrument stands on plan", nullptr, nullptr, true},
      {"set_up", "floor", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.setUps[i].floor; }, 0, 0, "\"First floor\"",
       "The floor that it stands on: a storey's name, or cellar", "the ground"},
      {"set_up", "mark", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.setUps[i].mark; }, 0, 0, "\"Nail in kerb\"",
       "The bench mark of the backsight", "the first bench mark"},
      {"set_up", "backsight", ValueKind::Metres,
       [](Job& job, size_t i) -> Slot { return &job.setUps[i].backsight; }, 0, 10, "1.415",
       "Staff reading on that mark", nullptr, nullptr, true},
      {"set_up", "staff", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.setUps[i].staff; }, 1, 10, "5000",
       "Length of the staff"},
  };
}

std::vector<KeySpec> readingKeys() {
  return {
      {"readings", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.readings[i].name; }, 0, 0, "\"After the pour\"",
       "What the set of readings is called", nullptr, nullptr, true},
      {"readings", "date", ValueKind::Date,
       [](Job& job, size_t i) -> Slot { return &job.readings[i].date; }, 0, 0, "\"2027-05-06\"",
       "The day; of two readings of one point the later counts", "not dated"},
      {"readings", "by", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.readings[i].by; }, 0, 0, "\"Foreman\"",
       "Who read", "nobody named"},
      {"readings", "file", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.readings[i].file; }, 0, 0,
       "\"concrete-readings.csv\"", "The CSV file with the readings, beside the job file", nullptr,
       nullptr, true},
      {"tolerance", "of", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.tolerances[i].of; }, 0, 0,
       "\"top-of-concrete\"", "What it is for, as readings name it", nullptr, nullptr, true},
      {"tolerance", "over", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.tolerances[i].over; }, 0, 0.5, "10",
       "Allowed above the level, outside the line or too long"},
      {"tolerance", "under", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.tolerances[i].under; }, 0, 0.5, "15",
       "Allowed below the level, inside the line or too short"},
      {"tolerance", "note", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.tolerances[i].note; }, 0, 0,
       "\"Specification, clause 7\"", "Where it comes from", "nothing"},
      {"question", "about", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.questions[i].about; }, 0, 0,
       "\"Top of concrete, corner C\"", "What the designer is asked about", nullptr, nullptr, true},
      {"question", "text", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.questions[i].text; }, 0, 0,
       "\"May the first bed be made up with a split course?\"", "The question", nullptr, nullptr,
       true},
  };
}

}  // namespace model
