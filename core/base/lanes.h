// Arithmetic on several numbers at once: Lanes<W> holds W of them, and code that is written for a type V runs
// on a single double or on lanes alike. Comparisons give a mask; select() takes the place of a branch.
//
//   template <class V> V half(V x) { return select(x > V(0), 0.5 * x, V(0)); }
//   half(3.0);  half(Lanes<4>(3.0));
//
// Everything is a template or always inlined: a source file that is compiled for a newer processor may
// include this and leaves no function behind that other files could be linked to.
#pragma once

#include <cmath>
#include <cstdint>
#include <cstring>
#include <memory>
#include <new>
#include <type_traits>
#include <vector>

namespace blinkwright {

#define BLINKWRIGHT_INLINE [[gnu::always_inline]] inline

/// The compiler's vector types.
template <int W>
struct LaneTypes;
template <>
struct LaneTypes<2> {
    typedef double Vector __attribute__((vector_size(16)));
    typedef std::int64_t Bits __attribute__((vector_size(16)));
};
template <>
struct LaneTypes<4> {
    typedef double Vector __attribute__((vector_size(32)));
    typedef std::int64_t Bits __attribute__((vector_size(32)));
};
template <>
struct LaneTypes<8> {
    typedef double Vector __attribute__((vector_size(64)));
    typedef std::int64_t Bits __attribute__((vector_size(64)));
};

template <int W>
struct LaneMask {
    using Bits = typename LaneTypes<W>::Bits;
    Bits bits; ///< 0 or -1
    BLINKWRIGHT_INLINE friend LaneMask operator&(LaneMask a, LaneMask b) { return {a.bits & b.bits}; }
    BLINKWRIGHT_INLINE friend LaneMask operator|(LaneMask a, LaneMask b) { return {a.bits | b.bits}; }
    BLINKWRIGHT_INLINE friend LaneMask operator!(LaneMask a) { return {~a.bits}; }
    BLINKWRIGHT_INLINE bool operator[](int k) const { return bits[k] != 0; }
};

template <int W>
struct Lanes {
    using Vector = typename LaneTypes<W>::Vector;
    using Mask = LaneMask<W>;
    static constexpr int width = W;
    Vector v;

    Lanes() = default;
    BLINKWRIGHT_INLINE Lanes(double x) : v(x - Vector{}) {}
    BLINKWRIGHT_INLINE explicit Lanes(Vector x) : v(x) {}
    BLINKWRIGHT_INLINE double operator[](int k) const { return v[k]; }
    BLINKWRIGHT_INLINE void set(int k, double x) { v[k] = x; }

    BLINKWRIGHT_INLINE friend Lanes operator+(Lanes a, Lanes b) { return Lanes(a.v + b.v); }
    BLINKWRIGHT_INLINE friend Lanes operator-(Lanes a, Lanes b) { return Lanes(a.v - b.v); }
    BLINKWRIGHT_INLINE friend Lanes operator*(Lanes a, Lanes b) { return Lanes(a.v * b.v); }
    BLINKWRIGHT_INLINE friend Lanes operator/(Lanes a, Lanes b) { return Lanes(a.v / b.v); }
    BLINKWRIGHT_INLINE friend Lanes operator-(Lanes a) { return Lanes(-a.v); }
    BLINKWRIGHT_INLINE Lanes& operator+=(Lanes b) { return v += b.v, *this; }
    BLINKWRIGHT_INLINE Lanes& operator-=(Lanes b) { return v -= b.v, *this; }
    BLINKWRIGHT_INLINE Lanes& operator*=(Lanes b) { return v *= b.v, *this; }
    BLINKWRIGHT_INLINE Lanes& operator/=(Lanes b) { return v /= b.v, *this; }
    BLINKWRIGHT_INLINE friend Mask operator<(Lanes a, Lanes b) { return {a.v < b.v}; }
    BLINKWRIGHT_INLINE friend Mask operator<=(Lanes a, Lanes b) { return {a.v <= b.v}; }
    BLINKWRIGHT_INLINE friend Mask operator>(Lanes a, Lanes b) { return {a.v > b.v}; }
    BLINKWRIGHT_INLINE friend Mask operator>=(Lanes a, Lanes b) { return {a.v >= b.v}; }
};

/// What kind of mask goes with a number, and how many numbers it is.
template <class V>
struct LaneTraits {
    using Mask = typename V::Mask;
    using Bits = typename V::Mask::Bits;
    static constexpr int width = V::width;
};
template <>
struct LaneTraits<double> {
    using Mask = bool;
    using Bits = std::uint64_t;
    static constexpr int width = 1;
};
template <class V>
using MaskOf = typename LaneTraits<V>::Mask;

BLINKWRIGHT_INLINE bool all(bool m) {
    return m;
}
BLINKWRIGHT_INLINE bool any(bool m) {
    return m;
}
/// One bit a lane.
template <int W>
BLINKWRIGHT_INLINE int bitsOf(LaneMask<W> m) {
#ifdef __AVX512DQ__
    if constexpr (W == 8) return __builtin_ia32_cvtq2mask512(m.bits) & 0xff;
#endif
#ifdef __AVX__
    if constexpr (W == 4) return __builtin_ia32_movmskpd256(typename LaneTypes<4>::Vector(m.bits));
#endif
#ifdef __SSE2__
    if constexpr (W == 2) return __builtin_ia32_movmskpd(typename LaneTypes<2>::Vector(m.bits));
#endif
    int bits = 0;
    for (int k = 0; k < W; ++k) bits |= m.bits[k] != 0 ? 1 << k : 0;
    return bits;
}
template <int W>
BLINKWRIGHT_INLINE bool all(LaneMask<W> m) {
    return bitsOf(m) == (1 << W) - 1;
}
template <int W>
BLINKWRIGHT_INLINE bool any(LaneMask<W> m) {
    return bitsOf(m) != 0;
}
/// A mask that is the same in every lane.
template <class V>
BLINKWRIGHT_INLINE MaskOf<V> maskOf(bool on) {
    if constexpr (LaneTraits<V>::width == 1)
        return on;
    else
        return {typename MaskOf<V>::Bits{} - (on ? 1 : 0)};
}

BLINKWRIGHT_INLINE double select(bool m, double a, double b) {
    return m ? a : b;
}
template <int W>
BLINKWRIGHT_INLINE Lanes<W> select(LaneMask<W> m, Lanes<W> a, Lanes<W> b) {
    if constexpr (W == 2) { // the 12th GCC fails on the other form where there is no 64-bit comparison
        using Bits = typename LaneTypes<W>::Bits;
        using Vector = typename LaneTypes<W>::Vector;
        return Lanes<W>(Vector((m.bits & Bits(a.v)) | (~m.bits & Bits(b.v))));
    }
    return Lanes<W>(m.bits ? a.v : b.v);
}
template <int W>
BLINKWRIGHT_INLINE Lanes<W> select(LaneMask<W> m, Lanes<W> a, double b) {
    return select(m, a, Lanes<W>(b));
}
template <int W>
BLINKWRIGHT_INLINE Lanes<W> select(LaneMask<W> m, double a, Lanes<W> b) {
    return select(m, Lanes<W>(a), b);
}

/// Names of their own, so that a `using namespace std` can not take their place.
namespace lane {

template <class V>
BLINKWRIGHT_INLINE V smaller(V a, V b) {
    return select(a < b, a, b);
}
template <class V>
BLINKWRIGHT_INLINE V larger(V a, V b) {
    return select(a > b, a, b);
}
template <class V>
BLINKWRIGHT_INLINE V magnitude(V a) {
    if constexpr (LaneTraits<V>::width == 1)
        return std::abs(a);
    else
        return larger(a, -a);
}
template <class V>
BLINKWRIGHT_INLINE MaskOf<V> finite(V a) {
    return magnitude(a) <= V(1.7976931348623157e308);
}
template <class V>
BLINKWRIGHT_INLINE V root(V a) {
    if constexpr (LaneTraits<V>::width == 1) {
        return std::sqrt(a);
    } else {
        // Called by name: the compiler keeps a loop of scalar roots apart, for the sake of errno.
        constexpr int W = V::width;
#ifdef __AVX512F__
        if constexpr (W == 8) return V(__builtin_ia32_sqrtpd512_mask(a.v, a.v, -1, 4));
#endif
#ifdef __AVX__
        if constexpr (W == 4) return V(__builtin_ia32_sqrtpd256(a.v));
#endif
#ifdef __SSE2__
        if constexpr (W == 2) return V(__builtin_ia32_sqrtpd(a.v));
#endif
        V out;
        for (int k = 0; k < W; ++k) out.v[k] = __builtin_sqrt(a.v[k]);
        return out;
    }
}

/// e^x, relative error under 1e-15; 0 below x = -708, above 708 as at 708.
template <class V>
BLINKWRIGHT_INLINE V exponential(V x) {
    // x = n ln 2 + r with |r| <= ln 2 / 2; the series of e^r; 2^n straight into the exponent's bits.
    constexpr double shift = 6755399441055744.0; // 1.5 x 2^52: adding it rounds to an integer
    const auto nothing = x < V(-708);
    x = smaller(larger(x, V(-708)), V(708));
    const V shifted = x * V(1.4426950408889634) + V(shift);
    const V n = shifted - V(shift);
    const V r = (x - n * V(6.93147180369123816490e-01)) - n * V(1.90821492927058770002e-10);
    // In pairs, which a processor works out side by side.
    const V r2 = r * r, r4 = r2 * r2;
    const V p0 = r + V(1);
    const V p2 = r * V(1.0 / 6) + V(0.5);
    const V p4 = r * V(1.0 / 120) + V(1.0 / 24);
    const V p6 = r * V(1.0 / 5040) + V(1.0 / 720);
    const V p8 = r * V(1.0 / 362880) + V(1.0 / 40320);
    const V p10 = (r2 * V(1.0 / 479001600) + r * V(1.0 / 39916800)) + V(1.0 / 3628800);
    V sum = ((p10 * r2 + p8) * r4 + (p6 * r2 + p4)) * r4 + (p2 * r2 + p0);
    using Bits = typename LaneTraits<V>::Bits;
    Bits exponent, bits;
    std::memcpy(&exponent, &shifted, sizeof exponent);
    std::memcpy(&bits, &sum, sizeof bits);
    bits += exponent << 52;
    std::memcpy(&sum, &bits, sizeof bits);
    return select(nothing, V(0), sum);
}

/// ln x for normal x > 0; absolute error under 1e-15 times the larger of 1 and the result.
template <class V>
BLINKWRIGHT_INLINE V logarithm(V x) {
    if constexpr (LaneTraits<V>::width == 1) {
        return std::log(x);
    } else {
        // x = m 2^e with m from sqrt(1/2) to sqrt 2; ln m = 2 artanh s, s = (m - 1) / (m + 1).
        using Bits = typename V::Mask::Bits;
        constexpr std::int64_t half = 0x3fe6a09e667f3bcd; // sqrt(1/2)
        constexpr std::int64_t mantissa = (std::int64_t(1) << 52) - 1;
        Bits bits;
        std::memcpy(&bits, &x.v, sizeof bits);
        const Bits above = bits - half;
        const Bits exponent = above >> 52;
        const Bits rest = (above & mantissa) + half;
        V m;
        std::memcpy(&m.v, &rest, sizeof bits);
        const V e(__builtin_convertvector(exponent, typename V::Vector));
        const V s = (m - V(1)) / (m + V(1)), square = s * s;
        V sum(1.0 / 21);
        for (int k = 19; k > 0; k -= 2) sum = sum * square + V(1.0 / k);
        return e * V(6.93147180369123816490e-01) + (V(2) * s * sum + e * V(1.90821492927058770002e-10));
    }
}

/// ln(1 + x) for 0 <= x <= 1, relative error under 1e-15.
template <class V>
BLINKWRIGHT_INLINE V logarithm1p(V x) {
    if constexpr (LaneTraits<V>::width == 1) {
        return std::log1p(x);
    } else {
        const V s = x / (V(2) + x), square = s * s; // ln(1 + x) = 2 artanh s, s <= 1/3
        V sum(1.0 / 31);
        for (int k = 29; k > 0; k -= 2) sum = sum * square + V(1.0 / k);
        return V(2) * s * sum;
    }
}

template <class V>
BLINKWRIGHT_INLINE double at(V x, int k) {
    if constexpr (LaneTraits<V>::width == 1)
        return x;
    else
        return x.v[k];
}
template <class V>
BLINKWRIGHT_INLINE void put(V& x, int k, double value) {
    if constexpr (LaneTraits<V>::width == 1)
        x = value;
    else
        x.v[k] = value;
}
BLINKWRIGHT_INLINE bool on(bool m, int) {
    return m;
}
template <int W>
BLINKWRIGHT_INLINE bool on(LaneMask<W> m, int k) {
    return m.bits[k] != 0;
}

} // namespace lane

/// Memory aligned for the widest lanes; the standard allocator of the 12th GCC does not keep to the alignment
/// of vector types everywhere.
template <class T>
struct LaneAllocator {
    using value_type = T;
    static constexpr std::align_val_t alignment{64};
    LaneAllocator() = default;
    template <class U>
    LaneAllocator(const LaneAllocator<U>&) {}
    T* allocate(std::size_t count) { return static_cast<T*>(::operator new(count * sizeof(T), alignment)); }
    void deallocate(T* memory, std::size_t) { ::operator delete(memory, alignment); }
    friend bool operator==(LaneAllocator, LaneAllocator) { return true; }
};
/// A vector of numbers, or of structures of them.
template <class T>
using LaneList =
    std::vector<T, std::conditional_t<(alignof(T) > alignof(double)), LaneAllocator<T>, std::allocator<T>>>;

} // namespace blinkwright
