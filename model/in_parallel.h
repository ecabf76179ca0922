// Work that falls into pieces which know nothing of one another, done on as many cores as there
// are.
#pragma once

#include <cstddef>
#include <functional>

namespace model {

// Cores to work on, at least one.
std::size_t coreCount();

// Calls `piece` once with each number below `count`, several at a time and in no order; comes back
// when all are done. A piece may write only what is its own. What a piece throws is thrown again
// here, that of the lowest number when several do.
void inParallel(std::size_t count, const std::function<void(std::size_t)>& piece);

}  // namespace model
