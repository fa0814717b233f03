// One part and one net a line, keys in a fixed order: two versions of a file differ where the circuits do.
#include "core/io/circuit_file.h"
#include "core/io/json_line.h"
#include "core/io/measurement_json.h"
#include "core/io/value_json.h"

namespace blinkwright::io {

using namespace circuit;

namespace {

void addValues(JsonLine& line, PartKind kind, const Values& values) {
    for (const KeyInfo& key : info(kind).keys)
        if (const auto found = values.find(key.key); found != values.end())
            line.add(key.key, valueJson(found->second));
}

std::string joined(const std::vector<std::string>& texts, std::string_view between) {
    std::string all;
    for (const std::string& text : texts) all.append(all.empty() ? "" : between).append(text);
    return all;
}

/// A list or an object with one element a line.
std::string block(const std::vector<std::string>& lines, char open, char close) {
    if (lines.empty()) return {open, close};
    return std::string(1, open) + "\n    " + joined(lines, ",\n    ") + "\n  " + close;
}

class Writer {
  public:
    explicit Writer(const Circuit& circuit) : c(circuit) {}

    std::string text() {
        add("format", quotedJson("blinkwright-circuit"));
        add("version", "1");
        add("title", quotedJson(c.title));
        add("notes", quotedJson(c.notes));
        add("parts", parts());
        add("nets", nets());
        add("part_sets", partSets());
        if (auto places = drawing(); !places.empty()) add("drawing", block(places, '{', '}'));
        if (!c.ties.empty()) add("ties", ties());
        if (!c.reels.empty()) add("reels", reels());
        add("run", run());
        if (!c.measurements.empty()) add("measurements", measurements());
        for (const Extra& extra : c.extras) add(extra.key, extra.json);
        return "{\n  " + joined(m_members, ",\n  ") + "\n}\n";
    }

  private:
    void add(std::string_view key, const std::string& json) {
        m_members.push_back(quotedJson(key) + ": " + json);
    }

    std::string parts() const {
        std::vector<std::string> lines;
        for (const Part& part : c.parts()) {
            JsonLine line;
            line.add("ref", quotedJson(part.ref));
            line.add("kind", quotedJson(info(part.kind).name));
            addValues(line, part.kind, part.values);
            line.add(part.extras);
            lines.push_back(line.json());
        }
        return block(lines, '[', ']');
    }

    std::string nets() const {
        std::vector<std::string> lines;
        for (const Net& net : c.nets()) {
            std::vector<std::string> pins;
            for (const PinRef& pin : net.pins) pins.push_back(quotedJson(c.pinText(pin)));
            JsonLine line;
            line.add("name", quotedJson(net.name));
            line.add("pins", "[" + joined(pins, ", ") + "]");
            line.add(net.extras);
            lines.push_back(line.json());
        }
        return block(lines, '[', ']');
    }

    std::string partSets() const {
        JsonLine sets;
        for (auto [name, set] : {std::pair{"A", PartSet::A}, std::pair{"B", PartSet::B}}) {
            JsonLine parts;
            for (const Part& part : c.parts()) {
                JsonLine values;
                addValues(values, part.kind, c.overrides(set, part.id));
                values.add(c.overrideExtras(set, part.id));
                if (!values.empty()) parts.add(part.ref, values.json());
            }
            sets.add(name, parts.json());
        }
        sets.add(c.partSetExtras);
        return sets.json();
    }

    std::vector<std::string> drawing() const {
        std::vector<std::string> lines;
        for (const Part& part : c.parts()) {
            const Placement* placement = c.placement(part.id);
            if (!placement) continue;
            JsonLine line;
            line.add("x", units::shortest(placement->x));
            line.add("y", units::shortest(placement->y));
            line.add("turn", std::to_string(placement->turn));
            if (placement->mirror) line.add("mirror", "true");
            line.add(placement->extras);
            lines.push_back(quotedJson(part.ref) + ": " + line.json());
        }
        return lines;
    }

    std::string ref(PartId id) const {
        const Part* part = c.find(id);
        return part ? part->ref : std::string();
    }

    std::string ties() const {
        std::vector<std::string> lists;
        for (const auto& tie : c.ties) {
            std::vector<std::string> texts;
            texts.reserve(tie.size());
            for (const ValueRef& value : tie) texts.push_back(quotedJson(ref(value.part) + "." + value.key));
            lists.push_back("[" + joined(texts, ", ") + "]");
        }
        return block(lists, '[', ']');
    }

    std::string reels() const {
        std::vector<std::string> lists;
        for (const auto& reel : c.reels) {
            std::vector<std::string> texts;
            texts.reserve(reel.size());
            for (PartId part : reel) texts.push_back(quotedJson(ref(part)));
            lists.push_back("[" + joined(texts, ", ") + "]");
        }
        return block(lists, '[', ']');
    }

    std::string measurements() const {
        std::vector<std::string> lines;
        for (const auto& measurement : c.measurements) lines.push_back(measurementJson(c, *measurement));
        return block(lines, '[', ']');
    }

    std::string run() const {
        JsonLine line;
        line.add("flashes", std::to_string(c.run.flashes));
        line.add("begin", c.run.begin == Begin::settled ? "\"settled\"" : "\"power-on\"");
        line.add(c.run.extras);
        return line.json();
    }

    const Circuit& c;
    std::vector<std::string> m_members;
};

} // namespace

std::string writeCircuit(const Circuit& circuit) {
    return Writer(circuit).text();
}

} // namespace blinkwright::io
