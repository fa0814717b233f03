// The toolkit for verbs that draw: its fonts and painters, never a display.
//
//   const Offscreen toolkit;      // as long as something is drawn
#pragma once

#include <QApplication>
#include <memory>
#include <string>

namespace blinkwright::app::verbs {

class Offscreen {
  public:
    Offscreen();

  private:
    std::string m_name = "blinkwright";
    char* m_argv[2] = {m_name.data(), nullptr};
    int m_argc = 1;
    std::unique_ptr<QApplication> m_application;
};

} // namespace blinkwright::app::verbs
