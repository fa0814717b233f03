// Expected failures are values: a Result<T> holds a T, or the Fault that says why there is none.
//
//   Result<Circuit> circuit = io::readCircuit(text);
//   if (!circuit) return circuit.fault();   // "parts[3].resistance: must be greater than 0, got -5"
//   use(circuit.value());
#pragma once

#include <cassert>
#include <optional>
#include <string>
#include <utility>
#include <variant>

namespace blinkwright {

/// What went wrong and where.
struct Fault {
    std::string place; ///< e.g. `parts[3].resistance`, a file name, or empty where there is no place.
    std::string text;  ///< One clear sentence part, e.g. `must be greater than 0, got -5`.

    /// `place: text`, or the text alone where there is no place.
    std::string message() const { return place.empty() ? text : place + ": " + text; }
    bool operator==(const Fault&) const = default;
};

/// A T, or the fault that says why there is none.
template <class T>
class [[nodiscard]] Result {
  public:
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Result(Fault fault) : m_state(std::in_place_index<1>, std::move(fault)) {}

    bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }

    T& value() & { return *checked(); }
    const T& value() const& { return *const_cast<Result*>(this)->checked(); }
    T&& value() && { return std::move(*checked()); }
    const Fault& fault() const {
        assert(!ok());
        return std::get<1>(m_state);
    }

  private:
    T* checked() {
        assert(ok());
        return &std::get<0>(m_state);
    }
    std::variant<T, Fault> m_state;
};

/// Done, or the fault that says why not.
template <>
class [[nodiscard]] Result<void> {
  public:
    Result() = default;
    Result(Fault fault) : m_fault(std::move(fault)) {}

    bool ok() const { return !m_fault.has_value(); }
    explicit operator bool() const { return ok(); }
    const Fault& fault() const {
        assert(!ok());
        return *m_fault;
    }

  private:
    std::optional<Fault> m_fault;
};

} // namespace blinkwright
