// From the JSON tree to a checked circuit. Every fault names its place as it stands in the file.
#include "core/io/circuit_file.h"
#include "core/io/measurement_json.h"
#include "core/io/object_reader.h"
#include "core/io/value_json.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::io {

using namespace circuit;

namespace {

using Type = JsonNode::Type;

constexpr double version = 1;

Fault at(const std::string& place, const Fault& inner) {
    const bool index = inner.place.starts_with('[');
    return {inner.place.empty() ? place : place + (index ? "" : ".") + inner.place, inner.text};
}
std::string item(const std::string& place, std::size_t index) {
    return place + "[" + std::to_string(index) + "]";
}
std::string member(const std::string& place, const std::string& key) {
    return place + "." + shownKey(key);
}
Fault noPart(const std::string& place, std::string_view ref) {
    return {place, wording::inWords("there is no part %1", shown(ref))};
}

class Reader {
  public:
    Result<Circuit> read(const JsonNode& root) {
        if (root.type != Type::object)
            return Fault{"", wording::inWords("a circuit file holds one JSON object, got %1", shown(root))};
        ObjectReader top(root, "");
        using Step = Result<void> (Reader::*)(ObjectReader&);
        constexpr Step steps[] = {&Reader::header,   &Reader::parts,   &Reader::nets,
                                  &Reader::partSets, &Reader::drawing, &Reader::ties,
                                  &Reader::reels,    &Reader::run,     &Reader::measurements};
        for (Step step : steps)
            if (auto ok = (this->*step)(top); !ok) return ok.fault();
        c.extras = top.extras();
        return std::move(c);
    }

  private:
    Result<void> header(ObjectReader& top) {
        const auto format = top.text("format");
        if (!format) return format.fault();
        if (format.value() != "blinkwright-circuit")
            return Fault{"format", wording::inWords("must be \"blinkwright-circuit\", got %1",
                                                    shown(std::string_view(format.value())))};
        const JsonNode* number = top.take("version");
        if (!number) return missing("version");
        if (number->type != Type::number || number->number != version)
            return Fault{"version", wording::inWords("this program reads version 1, the file has version %1",
                                                     shown(*number))};
        for (auto [key, field] : {std::pair{"title", &c.title}, std::pair{"notes", &c.notes}}) {
            auto text = top.textOr(key, "");
            if (!text) return text.fault();
            *field = std::move(text).value();
        }
        return {};
    }

    Result<void> parts(ObjectReader& top) {
        const JsonNode* list = top.take("parts");
        if (!list) return missing("parts");
        if (list->type != Type::list) return wrong("parts", wanted::list, *list);
        if (list->items.size() > maxParts)
            return Fault{"parts", wording::inWords("more than %1 parts are not supported, got %2", maxParts,
                                                   list->items.size())};
        for (std::size_t i = 0; i < list->items.size(); ++i)
            if (auto ok = part(list->items[i], item("parts", i)); !ok) return ok;
        return {};
    }

    Result<void> part(const JsonNode& node, const std::string& place) {
        if (node.type != Type::object) return wrong(place, wanted::object, node);
        ObjectReader fields(node, place);
        auto ref = fields.text("ref");
        if (!ref) return ref.fault();
        const auto kindName = fields.text("kind");
        if (!kindName) return kindName.fault();
        const auto kind = kindNamed(kindName.value());
        if (!kind) {
            std::string names;
            for (PartKind known : allKinds) names.append(names.empty() ? "" : ", ").append(info(known).name);
            return Fault{place + ".kind", wording::inWords("must be one of %1, got %2", names,
                                                           shown(std::string_view(kindName.value())))};
        }
        Values values;
        for (const KeyInfo& key : info(*kind).keys) {
            const JsonNode* given = fields.take(key.key);
            if (!given) continue;
            if (auto ok = readValue(key, *given, values[std::string(key.key)]); !ok)
                return at(place, ok.fault());
        }
        auto added = c.addPart(*kind, std::move(ref).value(), std::move(values), fields.extras());
        if (!added) return at(place, added.fault());
        return {};
    }

    Result<void> nets(ObjectReader& top) {
        const JsonNode* list = top.take("nets");
        if (!list) return missing("nets");
        if (list->type != Type::list) return wrong("nets", wanted::list, *list);
        if (list->items.size() > maxPins)
            return Fault{"nets", wording::inWords("more than %1 nets are not supported", maxPins)};
        for (std::size_t i = 0; i < list->items.size(); ++i)
            if (auto ok = net(list->items[i], item("nets", i)); !ok) return ok;
        return {};
    }

    Result<void> net(const JsonNode& node, const std::string& place) {
        if (node.type != Type::object) return wrong(place, wanted::object, node);
        ObjectReader fields(node, place);
        auto name = fields.text("name");
        if (!name) return name.fault();
        const JsonNode* pins = fields.take("pins");
        if (!pins) return missing(place + ".pins");
        if (pins->type != Type::list) return wrong(place + ".pins", wanted::list, *pins);
        const auto added = c.addNet(std::move(name).value(), fields.extras());
        if (!added) return at(place, added.fault());
        for (std::size_t k = 0; k < pins->items.size(); ++k) {
            const JsonNode& given = pins->items[k];
            const std::string here = item(place + ".pins", k);
            if (given.type != Type::text) return wrong(here, wording::marked("a pin written REF:PIN"), given);
            const auto pin = c.pinNamed(given.text);
            if (!pin) return Fault{here, pin.fault().text};
            if (auto ok = c.join(pin.value(), added.value()); !ok) return Fault{here, ok.fault().text};
        }
        return {};
    }

    Result<void> partSets(ObjectReader& top) {
        const JsonNode* sets = top.take("part_sets");
        if (!sets) return {};
        if (sets->type != Type::object) return wrong("part_sets", wanted::object, *sets);
        ObjectReader fields(*sets, "part_sets");
        for (auto [name, set] : {std::pair{"A", PartSet::A}, std::pair{"B", PartSet::B}}) {
            const JsonNode* parts = fields.take(name);
            if (!parts) continue;
            const std::string place = fields.place(name);
            if (parts->type != Type::object) return wrong(place, wanted::object, *parts);
            for (std::size_t i = 0; i < parts->items.size(); ++i)
                if (auto ok = setOfPart(set, parts->keys[i], parts->items[i], member(place, parts->keys[i]));
                    !ok)
                    return ok;
        }
        c.partSetExtras = fields.extras();
        return {};
    }

    Result<void> setOfPart(PartSet set, const std::string& ref, const JsonNode& node,
                           const std::string& place) {
        const Part* part = c.findRef(ref);
        if (!part) return noPart(place, ref);
        if (node.type != Type::object) return wrong(place, wanted::object, node);
        ObjectReader fields(node, place);
        for (const KeyInfo& key : info(part->kind).keys) {
            const JsonNode* given = fields.take(key.key);
            if (!given) continue;
            Value value;
            if (auto ok = readValue(key, *given, value); !ok) return at(place, ok.fault());
            if (auto ok = c.setOverride(set, part->id, std::string(key.key), std::move(value)); !ok)
                return at(place, ok.fault());
        }
        c.setOverrideExtras(set, part->id, fields.extras());
        return {};
    }

    Result<void> drawing(ObjectReader& top) {
        const JsonNode* places = top.take("drawing");
        if (!places) return {};
        if (places->type != Type::object) return wrong("drawing", wanted::object, *places);
        for (std::size_t i = 0; i < places->items.size(); ++i)
            if (auto ok = placement(places->keys[i], places->items[i], member("drawing", places->keys[i]));
                !ok)
                return ok;
        return {};
    }

    Result<void> placement(const std::string& ref, const JsonNode& node, const std::string& place) {
        const Part* part = c.findRef(ref);
        if (!part) return noPart(place, ref);
        if (node.type != Type::object) return wrong(place, wanted::object, node);
        ObjectReader fields(node, place);
        Placement placement;
        for (auto [key, field] : {std::pair{"x", &placement.x}, std::pair{"y", &placement.y}}) {
            const JsonNode* given = fields.take(key);
            if (!given) return missing(fields.place(key));
            if (given->type != Type::number) return wrong(fields.place(key), wanted::number, *given);
            *field = given->number;
        }
        if (const JsonNode* turn = fields.take("turn")) {
            const double t = turn->number;
            if (turn->type != Type::number || (t != 0 && t != 90 && t != 180 && t != 270))
                return wrong(fields.place("turn"), wording::marked("0, 90, 180 or 270"), *turn);
            placement.turn = static_cast<int>(t);
        }
        if (const JsonNode* mirror = fields.take("mirror")) {
            if (mirror->type != Type::flag) return wrong(fields.place("mirror"), wanted::flag, *mirror);
            placement.mirror = mirror->flag;
        }
        placement.extras = fields.extras();
        c.place(part->id, std::move(placement));
        return {};
    }

    /// A list of lists of texts; each text is handed on with its place.
    template <class Take>
    Result<void> lists(ObjectReader& top, const std::string& key, Take take) {
        const JsonNode* groups = top.take(key);
        if (!groups) return {};
        if (groups->type != Type::list) return wrong(key, wanted::list, *groups);
        for (std::size_t i = 0; i < groups->items.size(); ++i) {
            const JsonNode& group = groups->items[i];
            if (group.type != Type::list) return wrong(item(key, i), wanted::list, group);
            for (std::size_t k = 0; k < group.items.size(); ++k) {
                const std::string place = item(item(key, i), k);
                if (group.items[k].type != Type::text) return wrong(place, wanted::text, group.items[k]);
                if (auto ok = take(i, group.items[k].text, place); !ok) return ok;
            }
            if (group.items.empty()) return Fault{item(key, i), wording::inWords("must not be empty")};
        }
        return {};
    }

    Result<void> ties(ObjectReader& top) {
        auto ok = lists(
            top, "ties",
            [&](std::size_t i, const std::string& text, const std::string& place) -> Result<void> {
                const auto point = text.find('.');
                if (point == text.npos)
                    return Fault{place, wording::inWords("a value is written REF.KEY, got %1", shown(text))};
                const Part* part = c.findRef(text.substr(0, point));
                if (!part) return noPart(place, text.substr(0, point));
                c.ties.resize(i + 1);
                c.ties.back().push_back({part->id, text.substr(point + 1)});
                return {};
            });
        return ok ? c.canTie(c.ties) : ok;
    }

    Result<void> reels(ObjectReader& top) {
        auto ok =
            lists(top, "reels",
                  [&](std::size_t i, const std::string& text, const std::string& place) -> Result<void> {
                      const Part* part = c.findRef(text);
                      if (!part) return noPart(place, text);
                      c.reels.resize(i + 1);
                      c.reels.back().push_back(part->id);
                      return {};
                  });
        return ok ? c.canReel(c.reels) : ok;
    }

    Result<void> run(ObjectReader& top) {
        const JsonNode* node = top.take("run");
        if (!node) return {};
        if (node->type != Type::object) return wrong("run", wanted::object, *node);
        ObjectReader fields(*node, "run");
        if (const JsonNode* flashes = fields.take("flashes")) {
            if (flashes->type != Type::number || flashes->number != std::floor(flashes->number))
                return wrong("run.flashes", wanted::wholeNumber, *flashes);
            if (auto fault = rangeFault(flashesRange, flashes->number)) return Fault{"run.flashes", *fault};
            c.run.flashes = static_cast<int>(flashes->number);
        }
        if (const JsonNode* begin = fields.take("begin")) {
            const bool settled = begin->type == Type::text && begin->text == "settled";
            if (!settled && !(begin->type == Type::text && begin->text == "power-on"))
                return wrong("run.begin", wording::marked("\"power-on\" or \"settled\""), *begin);
            c.run.begin = settled ? Begin::settled : Begin::powerOn;
        }
        c.run.extras = fields.extras();
        return {};
    }

    Result<void> measurements(ObjectReader& top) {
        const JsonNode* node = top.take("measurements");
        if (!node) return {};
        if (node->type != Type::list) return wrong("measurements", wanted::list, *node);
        for (std::size_t i = 0; i < node->items.size(); ++i) {
            auto read = readMeasurement(c, node->items[i], item("measurements", i));
            if (!read) return read.fault();
            c.measurements.push_back(std::make_shared<const Measurement>(std::move(read).value()));
        }
        return {};
    }

    Circuit c;
};

} // namespace

Result<Circuit> readCircuit(std::string_view text) {
    if (text.size() > maxCircuitBytes)
        return Fault{"", wording::inWords("a circuit file of more than %1 MiB is not supported",
                                          maxCircuitBytes >> 20)};
    const auto root = readJson(text, {"format", "version", "title", "notes", "parts", "nets", "part_sets",
                                      "drawing", "ties", "reels", "run", "measurements"});
    if (!root) return root.fault();
    return Reader().read(root.value());
}

} // namespace blinkwright::io
