package wainbook.pack.page.view;

import java.util.Arrays;
import java.util.List;
import wainbook.pack.Pack;
import wainbook.pack.TransportNote;
import wainbook.pack.TransportNote.Condition;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * A transport note to print.
 *
 * @param onRecord what the record says of the pack
 */
public record TransportView(PackLine line, Pack pack, TransportNote note, Condition onRecord) {

    /** A line with how well it is known. */
    public record Said(String text, String standing, String meaning) {}

    public List<Said> lines() {
        return note.lines().stream()
                .map(one -> new Said(
                        Words.of("pack.note." + one.name()),
                        Words.of("pack.known." + one.standing().name()),
                        one.standing() == TransportNote.Standing.READ ? "quiet" : "warn"))
                .toList();
    }

    public String condition() {
        return Words.of("pack.condition." + note.condition().name());
    }

    public boolean milderThanRecord() {
        return note.condition().compareTo(onRecord) < 0;
    }

    public String recorded() {
        return Words.of("pack.condition." + onRecord.name());
    }

    public Form form() {
        return Form.EMPTY
                .with("condition", note.condition().name())
                .with("load", note.inVehicle() ? "vehicle" : "alone");
    }

    public List<Option> conditions() {
        return Arrays.stream(Condition.values())
                .map(one -> new Option(one.name(), Words.of("pack.condition." + one.name())))
                .toList();
    }

    public List<Option> loads() {
        return List.of(
                new Option("alone", Words.of("pack.loadAlone")), new Option("vehicle", Words.of("pack.loadVehicle")));
    }
}
