// Work that comes in independent pieces, done by several threads; the pieces are the same for any number of
// them.
//
//   together(points.size(), 2, [&](std::size_t k) { results[k] = compute(points[k]); });
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace blinkwright {

/// Calls piece(k) once for each k below `count`, in no order. The first exception reaches the caller.
/// @param threads at least 1; the caller's is one of them.
template <class Piece>
void together(std::size_t count, int threads, const Piece& piece) {
    std::atomic<std::size_t> next{0};
    std::mutex failing;
    std::exception_ptr failure;
    const auto work = [&] {
        try {
            for (std::size_t k = next++; k < count; k = next++) piece(k);
        } catch (...) {
            const std::lock_guard lock(failing);
            if (!failure) failure = std::current_exception();
            next = count;
        }
    };
    const std::size_t helpers = std::min(count, static_cast<std::size_t>(std::max(threads, 1)));
    std::vector<std::thread> others;
    for (std::size_t k = 1; k < helpers; ++k) others.emplace_back(work);
    work();
    for (auto& thread : others) thread.join();
    if (failure) std::rethrow_exception(failure);
}

} // namespace blinkwright
