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
    double uniform(std::uint64_t draw) const {
        return (static_cast<double>(bits(draw) >> 12) + 0.5) * 0x1p-52;
    }
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
        constexpr double beyond =
            0.0013498980316300933; // of a normal distribution, past three sigma: erfc(3/sqrt 2)/2
        return normalQuantile(beyond + u * (1 - 2 * beyond)) / 3;
    }
    /// A factor on a value with a tolerance, e.g. 0.05.
    double factor(Spread kind, double tolerance, std::uint64_t draw) const {
        return 1 + tolerance * spread(kind, draw);
    }

    /// The x that a standard normal variable is below with probability p, 0 < p < 1.
    static double normalQuantile(double p) {
        // Newton's method on the distribution; it is concave right of 0, so that it nears its goal from one
        // side after the first step; three sigma are as far as it is used.
        const bool left = p < 0.5;
        const double q = left ? p : 1 - p; // the tail
        double x = 0;
        for (int k = 0; k < 60; ++k) {
            const double tail = 0.5 * std::erfc(x * 0.70710678118654752440);
            const double density = 0.39894228040143267794 * std::exp(-0.5 * x * x);
            const double step = (tail - q) / density;
            x += step;
            if (std::abs(step) < 1e-14) break;
        }
        return left ? -x : x;
    }

  private:
    std::uint64_t m_key;
};

} // namespace blinkwright
