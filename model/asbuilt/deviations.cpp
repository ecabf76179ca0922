#include "model/asbuilt/deviations.h"

#include <algorithm>
#include <cmath>
#include <map>

#include <glm/geometric.hpp>

#include "model/asbuilt/read_points.h"
#include "model/asbuilt/words.h"
#include "model/job/reading_targets.h"
#include "model/levelling/set_up.h"

namespace model {

namespace {

std::string storeyNamed(const Job& job, const std::string& target) {
  const ReadingTarget* known = findReadingTarget(target);
  if (!known || known->storeys == TargetStoreys::None) return target;
  const auto storey = storeyOfTarget(target, job.storeys.size());
  return std::string(known->name) + ":" + std::to_string(storey.value_or(0));
}

// The set's rank: a later one counts.
std::vector<size_t> ranksOf(const Job& job) {
  std::vector<std::pair<std::string, size_t>> order;
  std::string date;
  for (size_t i = 0; i < job.readings.size(); ++i) {
    if (!job.readings[i].date.empty()) date = job.readings[i].date;
    order.emplace_back(date, i);
  }
  std::sort(order.begin(), order.end());
  std::vector<size_t> ranks(order.size());
  for (size_t i = 0; i < order.size(); ++i) ranks[order[i].second] = i;
  return ranks;
}

// Equal for readings of one point, to the millimetre.
std::string pointKey(const Deviation& d) {
  std::string key = std::to_string(static_cast<int>(d.kind)) + " " + d.target + " ";
  const ReadAt& at = d.place;
  if (at.between) {
    return key + std::to_string(at.between->first) + "-" + std::to_string(at.between->second);
  }
  if (at.corner) return key + "corner " + std::to_string(*at.corner);
  if (at.wall) return key + std::to_string(*at.wall) + " at " + lengthText(at.s);
  return key + lengthText(at.at.x) + " " + lengthText(at.at.y);
}

class Holder {
 public:
  Holder(const Job& job, const SettingOut& out) : job_(job), out_(out), points_(job, out) {}

  Deviations run() {
    for (size_t set = 0; set < job_.readings.size(); ++set) {
      for (size_t row = 0; row < job_.readings[set].rows.size(); ++row) hold(set, row);
    }
    markLatest();
    return std::move(result_);
  }

 private:
  void hold(size_t set, size_t row) {
    const Reading& reading = job_.readings[set].rows[row];
    std::string why;
    Deviation d;
    d.set = set;
    d.row = row;
    d.kind = reading.kind == ReadingKind::Staff ? ReadingKind::Level : reading.kind;
    d.target = storeyNamed(job_, reading.target);
    const auto place = points_.find(reading, why);
    if (place) d.place = *place;
    if (!place || !measure(reading, d, why)) {
      result_.unheld.push_back({set, row, why});
      return;
    }
    const std::string words = targetWords(job_, d.target);
    d.what = d.kind == ReadingKind::Side       ? "side " + d.place.words + " of the " + words
             : d.kind == ReadingKind::Diagonal ? "diagonal " + d.place.words + " of the " + words
                                               : words + ", " + d.place.words;
    d.verdict = judge(d.off, d.allowed);
    addWords(d);
    result_.held.push_back(std::move(d));
  }

  bool measure(const Reading& reading, Deviation& d, std::string& why) {
    if (d.kind == ReadingKind::Level) return measureLevel(reading, d, why);
    const Polygon ring = out_.ring(points_.inwardOf(reading.target));
    if (d.kind == ReadingKind::Corner) return measureCorner(reading, ring, d, why);
    d.read = reading.value;
    if (d.kind == ReadingKind::Face) {
      d.allowed = allowedFor(job_, d.target, points_.wallLengthAt(d.place));
    } else {
      d.design = glm::distance(ring[d.place.between->first], ring[d.place.between->second]);
      const bool side = d.kind == ReadingKind::Side;
      d.allowed = allowedFor(job_, side ? "side" : "diagonal", d.design);
    }
    d.off = d.read - d.design;
    return true;
  }

  bool measureLevel(const Reading& reading, Deviation& d, std::string& why) {
    d.read = reading.value;
    if (reading.kind == ReadingKind::Staff) {
      const auto level = throughSetUp(reading, why);
      if (!level) return false;
      d.read = *level;
    }
    const auto design = points_.designLevel(d.target, d.place, d.read, why);
    if (!design) return false;
    d.design = *design;
    d.off = d.read - d.design;
    d.place.level = d.read;
    points_.moveOnto(d.target, d.place);
    d.allowed = allowedFor(job_, d.target, points_.wallLengthAt(d.place));
    return true;
  }

  std::optional<double> throughSetUp(const Reading& reading, std::string& why) const {
    const SetUp* setUp = nullptr;
    for (const SetUp& each : job_.setUps) {
      if (each.name == reading.setUp) setUp = &each;
    }
    if (!setUp) why = "there is no set-up \"" + reading.setUp + "\"";
    if (!setUp) return std::nullopt;
    if (const auto instrument = instrumentOf(job_, *setUp))
      return levelRead(*instrument, reading.value);
    why = "set-up \"" + setUp->name + "\" stands on no bench mark of the job";
    return std::nullopt;
  }

  bool measureCorner(const Reading& reading, const Polygon& ring, Deviation& d,
                     std::string& why) const {
    if (!reading.position) why = "this corner has no position";
    if (!reading.position) return false;
    const size_t corner = *d.place.corner, n = out_.walls.size();
    const Vec2 shift = *reading.position - ring[corner];
    d.off = glm::length(shift);
    d.read = d.off;
    size_t i = 0;
    for (const size_t wall : {(corner + n - 1) % n, corner}) {
      d.shifts.at(i++) = {wall, glm::dot(shift, out_.walls[wall].along),
                          glm::dot(shift, out_.walls[wall].outward)};
    }
    d.allowed = allowedFor(job_, "corner", 0);
    return true;
  }

  void addWords(Deviation& d) const {
    d.offWords = offText(d.kind, d.off);
    const double limit = d.off > 0 ? d.allowed.over : d.allowed.under;
    d.limitText = limit > 0 ? millimetres(limit) : "none";
    d.words = d.offWords;
    if (d.offWords == "on") return;
    if (d.kind == ReadingKind::Corner) {
      for (const CornerShift& shift : d.shifts) {
        d.offWords += (&shift == d.shifts.data() ? " (" : ", ") +
                      offText(ReadingKind::Face, shift.outward) + " over " +
                      out_.walls[shift.wall].name;
      }
      d.offWords += ")";
    }
    d.words = d.offWords + ", " + d.limitText + " allowed: " + nameOf(d.verdict);
  }

  void markLatest() {
    const std::vector<size_t> ranks = ranksOf(job_);
    std::map<std::string, size_t> latest;  // into held
    for (size_t i = 0; i < result_.held.size(); ++i) {
      Deviation& d = result_.held[i];
      const auto [found, isNew] = latest.emplace(pointKey(d), i);
      if (isNew) continue;
      Deviation& other = result_.held[found->second];
      const bool wins = ranks[d.set] >= ranks[other.set];
      (wins ? other : d).latest = false;
      if (wins) found->second = i;
    }
  }

  const Job& job_;
  const SettingOut& out_;
  ReadPoints points_;
  Deviations result_;
};

}  // namespace

Deviations deriveDeviations(const Job& job, const SettingOut& settingOut) {
  return Holder(job, settingOut).run();
}

Verdict judge(double off, const Allowed& allowed) {
  const double mm = std::abs(std::round(off * 1000));
  const double limit = (off > 0 ? allowed.over : allowed.under) * 1000;
  if (mm > limit + 1e-6) return Verdict::Out;
  return mm > 0 && mm >= 0.8 * limit - 1e-6 ? Verdict::AtTheEdge : Verdict::Within;
}

const char* nameOf(Verdict verdict) {
  switch (verdict) {
    case Verdict::Within:
      return "within";
    case Verdict::AtTheEdge:
      return "at the edge";
    case Verdict::Out:
      break;
  }
  return "out";
}

const char* shapeOf(const Deviation& deviation) {
  if (deviation.verdict == Verdict::Within) return "●";
  if (deviation.verdict == Verdict::AtTheEdge) return "◆";
  return deviation.off > 0 ? "▲" : "▼";
}

std::string markOf(const Deviation& deviation) {
  return std::string(shapeOf(deviation)) + " " + nameOf(deviation.verdict);
}

std::string offText(ReadingKind kind, double off) {
  const std::string amount = lengthText(std::abs(off));
  if (amount == "0") return "on";
  const bool over = off > 0;
  switch (kind) {
    case ReadingKind::Face:
      return amount + (over ? " out" : " in");
    case ReadingKind::Corner:
      return amount + " off";
    case ReadingKind::Side:
    case ReadingKind::Diagonal:
      return amount + (over ? " long" : " short");
    default:
      return amount + (over ? " high" : " low");
  }
}

}  // namespace model
