// A vector that leaves plain values as they are when it grows, for arrays that are filled at once.
#pragma once

#include <memory>
#include <utility>
#include <vector>

namespace viewer {

template <typename T>
class LeavesAsIs : public std::allocator<T> {
 public:
  LeavesAsIs() = default;
  template <typename U>
  LeavesAsIs(const LeavesAsIs<U>&) {}
  template <typename U, typename... Values>
  void construct(U* at, Values&&... values) {
    if constexpr (sizeof...(Values) == 0)
      ::new (static_cast<void*>(at)) U;
    else
      std::construct_at(at, std::forward<Values>(values)...);
  }
};

// As std::vector, but that resize() writes nothing.
template <typename T>
using RawVector = std::vector<T, LeavesAsIs<T>>;

}  // namespace viewer
