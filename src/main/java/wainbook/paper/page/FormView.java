package wainbook.paper.page;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.paper.PaperForm;
import wainbook.paper.PaperForm.State;
import wainbook.paper.PaperSaying;

/**
 * One form.
 *
 * @param againstEnding what bars the reader from saying that it is not in use
 * @param notShown what an isolation taken from it does not show, in words
 */
public record FormView(
        FormLine line, List<Option> vehicles, List<Reason> againstEnding, List<String> notShown, Filled filled) {

    public PaperForm form() {
        return line.form();
    }

    public UUID id() {
        return UUID.randomUUID();
    }

    public boolean mayBeWritten() {
        return form().state() == State.BLANK || form().state() == State.IN_USE;
    }

    public boolean waits() {
        return form().state() == State.WAITING;
    }

    public boolean mayBeSpoiled() {
        return form().state() == State.BLANK;
    }

    public boolean inUse() {
        return form().state() == State.IN_USE;
    }

    /** Whether it may be said to be in use: always but for paper that is thrown away. */
    public boolean mayBeNoted() {
        return form().state() != State.SPOILED;
    }

    /** The vehicle to end the use at. */
    public String usedAt() {
        return form().usedAt().stream().findFirst().orElse(line.vehicle());
    }

    public Optional<String> sentBack() {
        return form().sentBack().map(entry -> ((PaperSaying.SentBack) entry.saying()).reason());
    }

    public Optional<String> spoiled() {
        return form().spoiled().map(entry -> ((PaperSaying.FormSpoiled) entry.saying()).reason());
    }

    public String photograph(Entry transcribed) {
        return "/evidence/"
                + ((PaperSaying.Transcribed) transcribed.saying()).photograph().sha256();
    }
}
