package wainbook.permit.rule;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wainbook.permit.PermitSaying.OnPaper;
import wainbook.permit.Trait;
import wainbook.works.Person;
import wainbook.works.instruments.Instrument;

/**
 * What is true now outside a permit.
 *
 * @param latestEnd until when a permit issued now may be valid; empty off shift
 * @param ofVehicle what the vehicle itself brings
 * @param onPaper permits of the vehicle that are open on paper
 * @param person everybody that the works ever engaged, by number
 * @param gear the register of instruments, by code
 * @param kept kinds of instrument that the register has
 */
public record AtHand(
        Instant now,
        LocalDate today,
        Optional<Instant> latestEnd,
        Set<Trait> ofVehicle,
        List<OnPaper> onPaper,
        Function<String, Optional<Person>> person,
        Function<String, Optional<Instrument>> gear,
        Set<String> kept) {}
