// What a permission or an agreement allows.
#include "model/lines/limits.h"
#include "model/checks/parts.h"
#include "model/level_text.h"

namespace model {

void checkLimits(const Checking& check) {
  for (const LimitTest& test : deriveLimits(check.job, check.settingOut)) {
    if (!test.given) continue;
    const bool over = test.verdict == LimitVerdict::Over;
    if (!over && test.verdict != LimitVerdict::AtTheLimit) continue;
    const bool level = test.kind == LimitKind::Ridge || test.kind == LimitKind::Eaves;
    const std::string found = level            ? "at " + levelText(test.found) + " m"
                              : test.found < 0 ? lengthText(-test.found) + " mm beyond it"
                                               : lengthText(test.found) + " mm";
    const std::string allowed = level ? "no higher than " + levelText(test.allowed) + " m"
                                      : "at least " + lengthText(test.allowed) + " mm";
    const std::string from = test.note.empty() ? "" : " (" + test.note + ")";
    check.warning(
        "limit[" + std::to_string(*test.given) + "]",
        test.what + ": " + found + ", and " + allowed + " is allowed" + from + ": " + test.words,
        over ? "ask the designer before anything is set out"
             : "set it out from that side first, and check it again on the concrete");
  }
}

}  // namespace model
