package wainbook.paper.page;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.page.Words;
import wainbook.paper.PaperForm;
import wainbook.paper.PaperSaying.Transcribed;

/** A form as lists and its own page show it. */
public record FormLine(PaperForm form) {

    public String code() {
        return form.code();
    }

    public String path() {
        return "/paper/" + form.code();
    }

    public String sort() {
        return Words.of("paper.sort." + form.sort().name());
    }

    /** Where it belongs or is used; empty for one in a folder. */
    public String vehicle() {
        return form.vehicle()
                .or(() -> form.last().map(entry -> ((Transcribed) entry.saying()).vehicle()))
                .or(() -> form.usedAt().stream().findFirst())
                .orElse("");
    }

    public Instant printedAt() {
        return form.printed().moment().at();
    }

    public String printedBy() {
        return form.printed().moment().who();
    }

    public String state() {
        return Words.of("paper.state." + form.state().name());
    }

    public String sign() {
        return switch (form.state()) {
            case BLANK -> "next";
            case IN_USE -> "working";
            case WAITING -> "signature";
            case ENTERED -> "done";
            case SPOILED -> "void";
        };
    }

    public String meaning() {
        return switch (form.state()) {
            case BLANK, ENTERED, SPOILED -> "quiet";
            case IN_USE, WAITING -> "warn";
        };
    }

    public Optional<String> usedAt() {
        return form.usedAt().isEmpty() ? Optional.empty() : Optional.of(String.join(", ", form.usedAt()));
    }

    List<String> cells() {
        return List.of(
                code(),
                form.sort().name(),
                vehicle(),
                form.state().name(),
                printedAt().toString(),
                printedBy());
    }
}
