#include "model/asbuilt/allowed.h"

#include <algorithm>
#include <cmath>

namespace model {

namespace {

constexpr const char* kPractice = "common practice, no source";
constexpr const char* kBedJoints = "NHBC Standards 2011, 1.2, level of bed joints";
constexpr const char* kOnPlan = "warranty technical manual V7, chapter 1, straight on plan";

enum class By { Nothing, BedJoint, TenMetres };

struct Rule {
  const char* target;
  double over, under;  // mm
  const char* source;
  By by = By::Nothing;
};

// Check values M22 (bed joints) and M25 (straight on plan); the rest is what small works keep to.
constexpr Rule kRules[] = {
    {"formation", 0, 25, kPractice},  // never soft fill under a strip
    {"blinding", 15, 15, kPractice},
    {"top-of-concrete", 15, 15, kPractice},
    {"cellar-formation", 0, 25, kPractice},
    {"cellar-blinding", 15, 15, kPractice},
    {"cellar-slab-top", 15, 15, kPractice},
    {"cellar-floor", 10, 10, kPractice},
    {"cellar-wall-top", 15, 15, kPractice},
    {"oversite", 0, 25, kPractice},
    {"slab-underside", 15, 15, kPractice},
    {"structural-floor", 15, 15, kPractice},
    {"finished-floor", 10, 10, kPractice},
    {"damp-course", 8, 8, kBedJoints, By::BedJoint},
    {"sill", 8, 8, kBedJoints, By::BedJoint},
    {"head", 8, 8, kBedJoints, By::BedJoint},
    {"ceiling", 10, 10, kPractice},
    {"joist-bearing", 5, 5, kPractice},
    {"outer-leaf-top", 8, 8, kBedJoints, By::BedJoint},
    {"wall-top", 8, 8, kBedJoints, By::BedJoint},
    {"plate-top", 5, 5, kPractice},
    {"eaves", 15, 15, kPractice},
    {"ridge", 15, 15, kPractice},
    {"foundation-outer", 25, 25, kPractice},
    {"outer-face", 10, 10, kOnPlan},
    {"outer-leaf-back", 10, 10, kOnPlan},
    {"inner-leaf-front", 10, 10, kOnPlan},
    {"inner-face", 10, 10, kOnPlan},
    {"foundation-inner", 25, 25, kPractice},
    {"corner", 10, 10, kPractice},
    {"side", 5, 5, kPractice, By::TenMetres},
    {"diagonal", 10, 10, kPractice},
};

// 8 in a wall of 5 m, in proportion in a shorter one; 12 in a longer one.
double bedJoint(double length) {
  if (length > 5 + 1e-9) return 12;
  return std::max(1.0, std::round(8 * length / 5));
}

}  // namespace

Allowed allowedFor(const Job& job, const std::string& target, double length) {
  const std::string family = target.substr(0, target.find(':'));
  for (const std::string& name : {target, family}) {
    for (const Tolerance& own : job.tolerances) {
      if (own.of != name) continue;
      return {own.over, own.under,
              own.note.empty() ? "the job's own" : "the job's own: " + own.note};
    }
  }
  for (const Rule& rule : kRules) {
    if (family != rule.target) continue;
    double over = rule.over, under = rule.under;
    if (rule.by == By::BedJoint) over = under = bedJoint(length);
    if (rule.by == By::TenMetres) over = under = std::max(over, std::round(over * length / 10));
    return {over / 1000, under / 1000, rule.source};
  }
  return {0.010, 0.010, kPractice};
}

}  // namespace model
