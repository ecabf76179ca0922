// Short texts for the sheet that are made from several values.
#pragma once

#include <string>
#include <vector>

#include "model/model.h"
#include "viewer/camera.h"
#include "viewer/frame.h"
#include "viewer/scene.h"

namespace viewer {

// The stage that is being built, or has just been completed, at a time of the programme's clock:
// time i + 1 is still stage i. 0 for a programme without stages.
int stageAt(double time, size_t stageCount);

// "Mon 12 Apr 2027" from "2027-04-12"; the text itself when it is not a date.
std::string dateWords(const std::string& iso);
// The ISO date of a time; empty when the programme has no dates.
std::string isoDateAt(const model::Programme& programme, double time);

// "Plan, parallel", "South elevation", "From the south-west, perspective".
std::string viewWords(const Camera& camera);
// The same, and where the building is cut: "Section at y = 4250, looking north" (the drawing's
// coordinates, mm), "From the south-west, cut at x = 3000".
std::string viewWords(const Frame& frame, const Scene& scene);
// True for views in which heights stand true on the screen: level and parallel.
bool isElevation(const Camera& camera);
bool isPlan(const Camera& camera);

// What the strings between one pair of boards are called together: "A-B: outer face, inner face,
// foundation edges" from "A-B outer face", "A-B foundation inner edge" and so on.
std::string stringGroupName(const std::vector<std::string>& names);

// "course 8", "course -13", "course 8.4" by the job's coursing from the damp course.
std::string courseWords(const model::Model& model, double level);

}  // namespace viewer
