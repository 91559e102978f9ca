package wainbook.matter;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.PersonName;
import wainbook.works.Role;

/**
 * One open matter, of a vehicle or of the works.
 *
 * @param order empty where no vehicle is concerned
 * @param about the check item it is about, in words
 * @param owners who must act: one of them
 * @param bars what cannot be done until it is settled; empty where it bars nothing
 * @param path where it can be settled
 */
public record OpenMatter(
        Sort sort,
        String order,
        String title,
        Optional<String> about,
        String what,
        Instant since,
        List<Owner> owners,
        Due due,
        String bars,
        String path) {

    /** Whether somebody or something stands still until it is settled. */
    boolean stopsSomebody() {
        return sort == Sort.HELP_CALL || !bars.isEmpty();
    }

    /** The sorts of open matter. */
    public enum Sort {
        NONCONFORMITY,
        HOLD,
        HELP_CALL,
        CARRIED_OVER,
        RE_SEQUENCED,
        DOCUMENT,
        CONTAINMENT,
        SECOND_CHECK,
        DRIFT,
        PERMIT,
        NEAR_MISS,
        SAFETY_STOP,
        VISITOR,
        PAPER,
        PACK,
        PART,
        WASTE,
        SNAG,
        CAMPAIGN;

        public String word() {
            return Words.of("matter.sort." + name());
        }
    }

    /** Who must act: a person by their number, or whoever has a role; {@code key} is what lists are filtered by. */
    public record Owner(String key, String text) {

        public static Owner of(Role role) {
            return new Owner(role.word(), Words.of("works." + role.word()));
        }

        public static Owner person(String number) {
            return new Owner(
                    number, PersonName.of(number).map(row -> row.fullName).orElse(number));
        }
    }

    /** By when: a stage, or a day that may have gone by. */
    public record Due(String text, Optional<LocalDate> on, boolean late) {

        public static Due open() {
            return new Due("", Optional.empty(), false);
        }

        public static Due at(String text) {
            return new Due(text, Optional.empty(), false);
        }

        public static Due on(LocalDate date, LocalDate today) {
            return new Due(Formats.date(date), Optional.of(date), date.isBefore(today));
        }
    }

    public OpenMatter {
        owners = List.copyOf(owners);
    }

    public String ownersInWords() {
        return owners.stream().map(Owner::text).collect(Collectors.joining(", "));
    }

    public boolean holds(String text) {
        String all = String.join(" ", order, title, about.orElse(""), what, ownersInWords());
        return all.toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT));
    }

    /** As one line of a spreadsheet; people by their number, since a file leaves the works. */
    public List<String> cells() {
        return List.of(
                order,
                title,
                sort.word(),
                about.orElse(""),
                what,
                owners.stream().map(Owner::key).collect(Collectors.joining(" ")),
                since.toString(),
                due.on().map(LocalDate::toString).orElse(due.text()),
                bars);
    }
}
