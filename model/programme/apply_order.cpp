#include <algorithm>
#include <numeric>
#include <set>

#include "model/programme/plan_stages.h"

namespace model {
namespace {

// The order in which stages are taken, by their places in the order before.
using Order = std::vector<size_t>;

Order movedAfter(const Order& order, size_t stage, size_t host) {
  Order result = order;
  result.erase(std::find(result.begin(), result.end(), stage));
  result.insert(std::find(result.begin(), result.end(), host) + 1, stage);
  return result;
}

std::vector<size_t> placesIn(const Order& order) {
  std::vector<size_t> places(order.size());
  for (size_t i = 0; i < order.size(); ++i) places[order[i]] = i;
  return places;
}

// The need that an order goes against, or null.
const PhysicalNeed* broken(const Order& order, const std::vector<PhysicalNeed>& needs) {
  const std::vector<size_t> places = placesIn(order);
  const auto found = std::find_if(needs.begin(), needs.end(), [&](const PhysicalNeed& need) {
    return places[need.before] > places[need.after];
  });
  return found == needs.end() ? nullptr : &*found;
}

// Makes the stages that are done with another one its last part.
void join(std::vector<Stage>& stages, const std::vector<size_t>& hostOf) {
  for (size_t i = 0; i < stages.size(); ++i) {
    size_t host = i;
    for (size_t steps = 0; hostOf[host] != host && steps < stages.size(); ++steps)
      host = hostOf[host];
    if (host == i) continue;
    Stage &into = stages[host], &from = stages[i];
    const double all = into.days + from.days;
    const double share = all > 0 ? into.days / all : 0.5;
    for (StageShare& each : into.shares) {
      each.from *= share;
      each.to *= share;
    }
    for (const StageShare& each : from.shares)
      into.shares.push_back(
          {each.key, share + each.from * (1 - share), share + each.to * (1 - share)});
    into.days = all;
    into.waitDays = std::max(into.waitDays, from.waitDays);
    into.what += " " + from.name + ": " + from.what;
    into.atEnd = from.atEnd;
    const auto add = [](std::string& to, const std::string& text) {
      if (!text.empty() && to.find(text) == std::string::npos) to += (to.empty() ? "" : " ") + text;
    };
    add(into.caution, from.caution);
    add(into.holdPoint, from.holdPoint);
    add(into.note, from.note);
    add(into.notice, from.notice);
    add(into.decision, from.decision);
    into.after.insert(into.after.end(), from.after.begin(), from.after.end());
  }
}

}  // namespace

void applyOrder(const ProgrammeInput& input,
                const std::function<std::vector<PhysicalNeed>()>& needs, Programme& programme) {
  const bool moves =
      std::any_of(input.stages.begin(), input.stages.end(),
                  [](const StageOverride& change) { return change.follows || change.with; });
  if (!moves) return;
  const std::vector<PhysicalNeed> physical = needs();
  std::vector<Stage>& stages = programme.stages;
  Order order(stages.size());
  std::iota(order.begin(), order.end(), size_t{0});
  std::vector<size_t> hostOf = order;
  for (size_t i = 0; i < input.stages.size(); ++i) {
    const StageOverride& change = input.stages[i];
    if (!change.follows && !change.with) continue;
    const std::string word = change.with ? "with" : "follows";
    const std::string key = "programme.stage[" + std::to_string(i) + "]." + word;
    const auto stage = programme.find(change.stage);
    if (!stage) continue;  // said already
    const auto host = stageNamed(programme, change.with ? *change.with : *change.follows, key);
    if (!host) continue;
    const auto refuse = [&](const std::string& why, const std::string& instead) {
      programme.faults.push_back({key, Severity::Error,
                                  "programme.stage: \"" + stages[*stage].id + "\" cannot " +
                                      (change.with ? "be done with \"" : "follow \"") +
                                      stages[*host].id + "\": " + why,
                                  instead});
    };
    if (*stage == *host || hostOf[*host] == *stage) {
      refuse("it would come after itself", "name another stage");
      continue;
    }
    const Order wanted = movedAfter(order, *stage, *host);
    if (const PhysicalNeed* need = broken(wanted, physical)) {
      refuse(need->why,
             "\"" + stages[need->after].id + "\" comes after \"" + stages[need->before].id + "\"");
      continue;
    }
    order = wanted;
    if (change.with) hostOf[*stage] = *host;
  }
  // What is joined must still be next to it once all has been moved.
  for (size_t i = 0; i < order.size(); ++i) {
    const size_t stage = order[i];
    if (hostOf[stage] == stage) continue;
    const size_t before = i == 0 ? stage : order[i - 1];
    if (before == hostOf[stage] || hostOf[before] == hostOf[stage]) continue;
    programme.faults.push_back({"programme.stage", Severity::Error,
                                "programme.stage: \"" + stages[stage].id +
                                    "\" cannot be done with \"" + stages[hostOf[stage]].id +
                                    "\": \"" + stages[before].id + "\" is taken between them",
                                "leave out one of the two changes"});
    hostOf[stage] = stage;
  }
  join(stages, hostOf);

  std::vector<size_t> places(stages.size());
  std::vector<Stage> result;
  for (size_t stage : order) {
    if (hostOf[stage] == stage) {
      places[stage] = result.size();
      result.push_back(stages[stage]);
    } else {
      places[stage] = result.size() - 1;
    }
  }
  for (size_t i = 0; i < result.size(); ++i) {
    std::set<size_t> after;
    // A usual order that the job goes against binds no more.
    for (size_t before : result[i].after)
      if (places[before] < i) after.insert(places[before]);
    result[i].after.assign(after.begin(), after.end());
  }
  stages = std::move(result);
}

}  // namespace model
