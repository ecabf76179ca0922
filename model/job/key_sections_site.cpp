#include "model/job/key_sections.h"

// Each row: table, key, kind, where it lives in Job, allowed low and high (metres or as given),
// example, meaning, then what holds when it is left out, choices, and whether it must be there.

namespace model {

std::vector<KeySpec> jobKeys() {
  return {
      {"job", "name", ValueKind::Text, [](Job& job, size_t) -> Slot { return &job.name; }, 0, 0,
       "\"Orchard house\"", "What the job is called"},
      {"job", "drawing", ValueKind::Text, [](Job& job, size_t) -> Slot { return &job.drawing; }, 0,
       0, "\"1204/07 revision C\"", "The designer's drawing that the numbers are from",
       "none is named"},
      {"job", "datum", ValueKind::Text, [](Job& job, size_t) -> Slot { return &job.datumNote; }, 0,
       0, "\"Finished ground floor\"", "What level 0.000 stands for"},
      {"job", "ordnance_datum", ValueKind::Level,
       [](Job& job, size_t) -> Slot { return &job.ordnanceDatum; }, -500, 9000, "61.350",
       "Level of 0.000 above ordnance datum", "only levels from 0.000 are shown"},
  };
}

std::vector<KeySpec> siteKeys() {
  return {
      {"site", "boundary", ValueKind::Corners,
       [](Job& job, size_t) -> Slot { return &job.site.boundary; }, 0, 0,
       "[[-3000, -3000], [9000, -3000], [9000, 8000], [-3000, 8000]]",
       "Corners of the site, in order either way round",
       "8 m round everything that stands or will stand"},
      {"site", "latitude", ValueKind::Degrees,
       [](Job& job, size_t) -> Slot { return &job.site.latitude; }, -90, 90, "52.4",
       "Latitude, north positive; for where the sun stands"},
      {"site", "north", ValueKind::Degrees,
       [](Job& job, size_t) -> Slot { return &job.site.northBearing; }, -360, 360, "12",
       "Clockwise from the sheet's up to true north"},
      {"site.bench_mark", "name", ValueKind::Text,
       [](Job& job, size_t) -> Slot { return &job.site.benchMark->name; }, 0, 0,
       "\"Bolt in gate pier\"", "What the mark is"},
      {"site.bench_mark", "at", ValueKind::Point,
       [](Job& job, size_t) -> Slot { return &job.site.benchMark->at; }, 0, 0, "[-4100, 13600]",
       "Where it is on plan", nullptr, nullptr, true},
      {"site.bench_mark", "level", ValueKind::Level,
       [](Job& job, size_t) -> Slot { return &job.site.benchMark->level; }, -500, 9000, "0.185",
       "Its level", nullptr, nullptr, true},
      {"site.spots", "at", ValueKind::Point,
       [](Job& job, size_t i) -> Slot { return &job.site.spots[i].at; }, 0, 0, "[0, 0]",
       "Where the level was taken", nullptr, nullptr, true},
      {"site.spots", "level", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.site.spots[i].level; }, -500, 9000, "-0.430",
       "Level of the ground there before work starts", nullptr, nullptr, true},
      {"site.building", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.site.buildings[i].name; }, 0, 0,
       "\"Old wash house\"", "What it is called", "no name"},
      {"site.building", "kind", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.site.buildings[i].kind; }, 0, 0, "\"existing\"",
       "existing: on this site and stays; neighbour: next door; demolish: on this site and is "
       "taken down first",
       "existing", "existing|neighbour|demolish"},
      {"site.building", "outline", ValueKind::Corners,
       [](Job& job, size_t i) -> Slot { return &job.site.buildings[i].outline; }, 0, 0,
       "[[14600, 7200], [17000, 7250], [16960, 10300], [14560, 10250]]",
       "Its corners, in order either way round", nullptr, nullptr, true},
      {"site.building", "height", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.site.buildings[i].height; }, 0.3, 100, "2400",
       "Height of its walls above the lowest ground at its outline", "2700"},
      {"site.building", "foundation_depth", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.site.buildings[i].foundationDepth; }, 0, 20,
       "500", "Depth of its foundations below the lowest ground at its outline, as far as known",
       "600"},
  };
}

std::vector<KeySpec> groundKeys() {
  return {
      {"ground", "topsoil", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.ground.topsoil; }, 0, 2, "150",
       "Depth of topsoil, stripped first"},
      {"ground", "good_ground", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.ground.goodGround; }, 0, 3, "600",
       "Depth below the surface at which the ground may bear"},
      {"ground", "bulking", ValueKind::Factor,
       [](Job& job, size_t) -> Slot { return &job.ground.bulking; }, 1, 2, "1.3",
       "Loose volume of dug soil over its volume in the ground"},
      {"ground", "batter", ValueKind::Degrees,
       [](Job& job, size_t) -> Slot { return &job.ground.batter; }, 30, 90, "90",
       "Slope of the sides of the cellar dig; 90 is upright and supported"},
      {"ground", "working_space", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.ground.workingSpace; }, 0.3, 5, "600",
       "Clear of the cellar walls all round, at the bottom of the dig"},
  };
}

std::vector<KeySpec> outlineKeys() {
  return {
      {"outline", "corners", ValueKind::Corners,
       [](Job& job, size_t) -> Slot { return &job.outline; }, 0, 0,
       "[[0, 0], [6740, 0], [6740, 4490], [0, 4490]]",
       "Corners of the outer face of the finished masonry, in order either way round. The first is "
       "corner A, the next B, and so on; the wall between two is named by them: A-B",
       nullptr, nullptr, true},
  };
}

std::vector<KeySpec> storeyKeys() {
  return {
      {"storey", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.storeys[i].name; }, 0, 0, "\"First floor\"",
       "What the storey is called; openings name it", "Ground floor"},
      {"storey", "floor", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.storeys[i].floor; }, -500, 9000, "2.700",
       "Finished floor level", "0.000"},
  };
}

}  // namespace model
