// Random numbers that are the same on every machine and for every order of work: each is worked out from a
// seed, the number of a board and of a draw on that board, with no state in between.
//
//   const RandomDraws draws(seed, board);
//   draws.uniform(0)                          // in (0, 1), the same whenever it is asked for
//   draws.factor(Spread::normal, 0.05, 3)     // from 0.95 to 1.05
//
// The generator is the 64-bit finaliser of S. Vigna's splitmix64 (public domain,
// prng.di.unimi.it/splitmix64.c; G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number
// generators", OOPSLA 2014), run as a counter.
#pragma once

#include <cmath>
#include <cstdint>

namespace blinkwright {

/// The step of splitmix64's counter: 2^64 over the golden section, odd.
inline constexpr std::uint64_t splitmixStep = 0x9e3779b97f4a7c15;

/// Output of splitmix64 whose state, its step already added, is `z`.
constexpr std::uint64_t splitmix(std::uint64_t z) {
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
    z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
    return z ^ (z >> 31);
}

/// How the values of a tolerance are spread.
enum class Spread {
    uniform,    ///< alike over all of it
    normal,     ///< the tolerance is three standard deviations, nothing beyond it
    triangular, ///< most in the middle, none at the ends
};

class RandomDraws {
  public:
    RandomDraws(std::uint64_t seed, std::uint64_t board)
        : m_key(splitmix(splitmix(seed + splitmixStep) + (board + 1) * splitmixStep)) {}

    std::uint64_t bits(std::uint64_t draw) const { return splitmix(m_key + (draw + 1) * splitmixStep); }
    /// In the open interval from 0 to 1.
    double uniform(std::uint64_t draw) const { return fraction(bits(draw)); }
    /// Mean 0; from -1 to 1.
    double spread(Spread kind, std::uint64_t draw) const {
        const double u = uniform(draw);
        switch (kind) {
        case Spread::uniform:
            return 2 * u - 1;
        case Spread::triangular:
            return u < 0.5 ? std::sqrt(2 * u) - 1 : 1 - std::sqrt(2 * (1 - u));
        case Spread::normal:
            break;
        }
        // A normal distribution whose three sigma are 1, nothing beyond: points are drawn over the square
        // around its bell until one falls under it (J. von Neumann, "Various techniques used in connection
        // with random digits", NBS Applied Mathematics Series 12, 1951). Half of them do.
        for (std::uint64_t state = bits(draw);;) {
            const double x = 2 * fraction(splitmix(state += splitmixStep)) - 1;
            if (fraction(splitmix(state += splitmixStep)) < decay(4.5 * x * x)) return x;
        }
    }
    /// A factor on a value with a tolerance, e.g. 0.05.
    double factor(Spread kind, double tolerance, std::uint64_t draw) const {
        return 1 + tolerance * spread(kind, draw);
    }

  private:
    /// Of random bits: in the open interval from 0 to 1.
    static double fraction(std::uint64_t bits) { return (static_cast<double>(bits >> 12) + 0.5) * 0x1p-52; }
    /// e^-t for t from 0 to 4.5, by its series: no library's rounding decides what is drawn.
    static double decay(double t) {
        const double part = -t / 8;
        double sum = 1;
        for (int k = 15; k > 0; --k) sum = 1 + part / k * sum; // what is left out is below 1e-17
        const double square = sum * sum, fourth = square * square;
        return fourth * fourth;
    }
    std::uint64_t m_key;
};

} // namespace blinkwright
