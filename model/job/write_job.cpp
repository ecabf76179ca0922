#include "model/job/write_job.h"

#include "model/job/key_table.h"
#include "model/job/parse_toml.h"
#include "model/job/read_plain.h"
#include "model/job/rewriter.h"
#include "model/job/section_text.h"

namespace model {

std::string writeJob(std::string_view text, const Job& job) {
  constexpr std::string_view kMark = "\xEF\xBB\xBF";
  const bool marked = text.substr(0, kMark.size()) == kMark;
  const std::string body(marked ? text.substr(kMark.size()) : text);
  const std::string mark(marked ? kMark : std::string_view{});
  const auto before = readPlain(body);
  if (before && sameJob(*before, job)) return mark + body;
  if (before) {
    Problems none;
    const ParsedToml parsed = parseToml(body, "", none);
    const std::string changed = Rewriter(body, parsed.table, *before, job).rewritten();
    const auto after = readPlain(changed);
    if (after && sameJob(*after, job)) return mark + changed;
  }
  // TOML has ways to say things that the rewriter does not follow; what the job says comes before
  // how it was written.
  return mark + freshText(job);
}

}  // namespace model
