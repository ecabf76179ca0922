#include "model/job/key_sections.h"

// Each row: table, key, kind, where it lives in Job, allowed low and high (metres or as given),
// example, meaning, then what holds when it is left out, choices, and whether it must be there.

namespace model {

std::vector<KeySpec> openingKeys() {
  return {
      {"opening", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].name; }, 0, 0, "\"Front door\"",
       "What it is called", "no name"},
      {"opening", "kind", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].kind; }, 0, 0, "\"door\"",
       "What goes in it; opening: nothing", "window", "door|window|garage|opening"},
      {"opening", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].wall; }, 0, 0, "\"A-B\"",
       "The wall it is in", nullptr, nullptr, true},
      {"opening", "from", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].from; }, 0, 0, "\"A\"",
       "The corner that it is measured from", nullptr, nullptr, true},
      {"opening", "at", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].at; }, 0, 1000, "1125",
       "Along the outer face from that corner to the nearer jamb", nullptr, nullptr, true},
      {"opening", "width", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].width; }, 0.1, 20, "1360",
       "Built width between jambs", "910"},
      {"opening", "sill", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].sill; }, -500, 9000, "1.050",
       "Level of the underside of the opening",
       "window: the storey's floor + 1.050; others: the floor"},
      {"opening", "head", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].head; }, -500, 9000, "2.100",
       "Level of the top of the opening, the underside of its lintel",
       "the storey's floor + 2.100"},
      {"opening", "lintel_height", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].lintelHeight; }, 0.04, 0.6, "140",
       "Height of the lintels over it", "150"},
      {"opening", "lintel_bearing", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].lintelBearing; }, 0.05, 0.6, "200",
       "What its lintels bear on at each end", "150"},
      {"opening", "padstone", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].padstone; }, 0, 1.5, "440",
       "Length of a padstone under each end of the inner leaf's lintel, a course of blocks high",
       "none"},
      {"opening", "sill_height", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].sillHeight; }, 0, 0.3, "65",
       "Height of a sill laid under a window in the outer leaf", "none"},
      {"opening", "storey", ValueKind::StoreyRef,
       [](Job& job, size_t i) -> Slot { return &job.openings[i].storey; }, 0, 0, "\"First floor\"",
       "The storey it belongs to, by name", "the first storey"},
  };
}

std::vector<KeySpec> movementJointKeys() {
  return {
      {"movement_joint", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.movementJoints[i].wall; }, 0, 0, "\"A-B\"",
       "The wall it is in", nullptr, nullptr, true},
      {"movement_joint", "from", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.movementJoints[i].from; }, 0, 0, "\"A\"",
       "The corner that it is measured from", nullptr, nullptr, true},
      {"movement_joint", "at", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.movementJoints[i].at; }, 0, 1000, "4500",
       "Along the outer face from that corner to its middle", nullptr, nullptr, true},
      {"movement_joint", "width", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.movementJoints[i].width; }, 0.005, 0.05, "16",
       "How wide it is left", "16"},
  };
}

std::vector<KeySpec> roofKeys() {
  return {
      {"roof", "pitch", ValueKind::Pitch, [](Job& job, size_t) -> Slot { return &job.roof.pitch; },
       5, 75, "40", "Pitch of every slope; also as rise in run, \"8 in 12\""},
      {"roof", "eaves", ValueKind::Length, [](Job& job, size_t) -> Slot { return &job.roof.eaves; },
       0, 1.5, "300", "Overhang on plan outside the outer face"},
      {"roof", "verge", ValueKind::Length, [](Job& job, size_t) -> Slot { return &job.roof.verge; },
       0, 1, "150", "The same at a gable"},
      {"roof", "rafter_depth", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.roof.rafterDepth; }, 0.05, 0.6, "150",
       "Depth of the rafters, square to the slope"},
      {"roof", "rafter_width", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.roof.rafterWidth; }, 0.02, 0.3, "47",
       "Width of the rafters"},
      {"roof", "spacing", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.roof.spacing; }, 0.2, 1.5, "400",
       "Rafters, centre to centre along the eaves"},
      {"roof", "covering", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.roof.covering; }, 0.005, 0.5, "60",
       "Underlay, battens and tiles together, square to the slope"},
      {"roof", "plate_width", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.roof.plateWidth; }, 0.03, 0.3, "100",
       "Width of the wall plate"},
      {"roof", "plate_depth", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.roof.plateDepth; }, 0.02, 0.2, "50",
       "Depth of the wall plate"},
      {"roof.edge", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.roof.edges[i].wall; }, 0, 0, "\"E-F\"",
       "The wall; walls without an entry are hips", nullptr, nullptr, true},
      {"roof.edge", "kind", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.roof.edges[i].kind; }, 0, 0, "\"gable\"",
       "What the roof does there", "hip", "hip|gable"},
      {"roof.edge", "parapet", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.roof.edges[i].parapet; }, 0, 2, "300",
       "Brickwork of a gable over the covering, square to the slope; 0: the roof goes over the "
       "wall",
       "0"},
      {"roof.edge", "coping", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.roof.edges[i].coping; }, 0, 0.3, "75",
       "Thickness of the coping on a parapet, which stands out 40 at each side; 0: none", "75"},
  };
}

}  // namespace model
