// SPDX-License-Identifier: MIT
#include "line_details.hpp"

#include "scruple/check/contents.hpp"
#include "words.hpp"

namespace scruple::plan {

namespace {

using check::Addition;
using check::Exact;
using Shown = GrowingText::Shown;

GrowingText equals(const Exact& amount, std::string unit) {
    return {"(= ", ")", Shown::three_figures, amount, std::move(unit)};
}

void add_texts(std::vector<GrowingText>& to, const std::vector<std::string>& texts) {
    for (const std::string& text : texts) to.push_back({text});
}

void add_written(std::vector<GrowingText>& to, const Addition& addition) {
    if (addition.worked_out) to.push_back({"worked out from what is expected"});
    GrowingText written{as_written(addition)};
    written.only_as_written = true;
    if (!written.before.empty()) to.push_back(std::move(written));
}

std::string figure_in(const GrowingText& text, const Exact& scale) {
    const Exact amount = text.amount * scale;
    switch (text.shown) {
        case Shown::none:
            return {};
        case Shown::three_figures:
            return plain(amount, text.unit, 3).with_unit();
        case Shown::grams:
            return plain_grams(amount).with_unit();
        case Shown::whole_ml:
            return plain_ml(amount.ceil()).with_unit();
    }
    return {};
}

}  // namespace

std::optional<std::string> text_of(const GrowingText& text, const Exact& scale) {
    if (text.only_as_written && scale != 1) return std::nullopt;
    return text.before + figure_in(text, scale) + text.after;
}

void append_details(std::vector<std::string>& to, const std::vector<GrowingText>& details, const Exact& scale) {
    for (const GrowingText& detail : details)
        if (auto text = text_of(detail, scale)) to.push_back(std::move(*text));
}

std::vector<GrowingText> put_details(const check::Model& model, const Step& step) {
    const Addition& addition = *step.addition;
    const check::Dose dose = check::dose_of(model, addition, step.measure);
    std::vector<GrowingText> details;
    const bool dissolved = addition.strength || addition.saturated_at;
    if (dissolved && !dose.grams.is_zero()) details.push_back(equals(dose.grams, "g"));
    if (addition.by == Addition::By::drops && !dose.ml.is_zero()) details.push_back(equals(dose.ml, "ml"));
    if (addition.parts)
        details.push_back({quantity::exact_text(*addition.parts) + (*addition.parts == 1 ? " part" : " parts")});
    if (step.piece != Step::Piece::rest) add_written(details, addition);
    add_texts(details, detail_words(addition.details));
    if (addition.optional)
        details.push_back(
            {addition.optional_reason.empty() ? "optional" : "optional: " + std::string(addition.optional_reason)});
    return details;
}

std::vector<GrowingText> mark_details(const Step& step) {
    std::vector<GrowingText> details;
    add_written(details, *step.addition);
    add_texts(details, detail_words(step.addition->details));
    return details;
}

std::vector<GrowingText> pour_details(const Step& step) {
    std::vector<GrowingText> details;
    if (step.move != nullptr) {
        const auto& words = step.move->details;
        add_texts(details, detail_words({words.data(), words.size()}));
    }
    if (step.addition != nullptr) add_texts(details, detail_words(step.addition->details));
    return details;
}

}  // namespace scruple::plan
