// Random numbers that the bytes of an input decide, for inputs that are made from bytes.
#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>

namespace tenter::fuzz {

/// A generator of random numbers as the standard library wants it. The first numbers are the bytes of the
/// input, so that a change of a byte changes one decision; after its end they are pseudo-random, because
/// distributions can wait forever for another number than the same one.
class ByteSource {
public:
    using result_type = std::uint32_t;

    /// `data` must outlive the object.
    ByteSource(const std::uint8_t* data, std::size_t size) : next_(data), end_(data + size) {}

    static constexpr result_type min() { return 0; }
    static constexpr result_type max() { return std::numeric_limits<result_type>::max(); }
    result_type operator()() {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        const auto random = static_cast<result_type>(state_ >> 32U);
        if (next_ == end_) return random;
        // The byte decides the highest bits, which decide which of a few values is chosen.
        return (std::uint32_t{*next_++} << 24U) | (random >> 8U);
    }

private:
    const std::uint8_t* next_;
    const std::uint8_t* end_;
    std::uint64_t state_ = 1;
};

}  // namespace tenter::fuzz
