package wainbook.station.judgement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import wainbook.act.Reason;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.station.Reply;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.determination.GivenInputs;

/**
 * Judges a reply by what its item asks. Knows nothing of people, time or other items.
 *
 * @param joint the joint that the item is about, as released now
 * @param toolPercent expanded uncertainty of the tightening tool, in percent of its reading; zero where unknown
 * @param given what the sheet and earlier items of the vehicle give to a determination
 * @param file finds a file that was handed in
 */
public record Judge(
        About about,
        Basis basis,
        Optional<Joint> joint,
        BigDecimal toolPercent,
        Function<Ask.Determine, GivenInputs> given,
        Files file) {

    /** Finds a file by its fingerprint. */
    public interface Files {
        Optional<EvidenceFile> file(String sha256);
    }

    public Judged of(Ask ask, Reply reply) {
        if (ask instanceof Ask.Confirm) {
            Optional<Joint> graver = joint.filter(known -> !known.jointClass().mayBeTicked());
            if (graver.isPresent()) {
                return new Judged.Faulty(List.of(Reason.of(
                        "station.notByTick",
                        Reason.WORKS_RULE,
                        graver.get().code(),
                        graver.get().jointClass())));
            }
            return Judged.answered(new StationSaying.Confirmed(about, basis));
        }
        if (ask instanceof Ask.Measure measure) {
            return measured(measure, reply);
        }
        if (ask instanceof Ask.Table table) {
            return tabled(table, reply);
        }
        if (ask instanceof Ask.Tighten) {
            return new TighteningJudge(about, basis, joint.orElseThrow(), toolPercent).of(reply);
        }
        if (ask instanceof Ask.Recheck) {
            return new RecheckJudge(about, basis, joint.orElseThrow(), toolPercent).of(reply);
        }
        if (ask instanceof Ask.Determine determine) {
            return new DetermineJudge(about, basis, given.apply(determine), toolPercent).of(determine, reply);
        }
        if (ask instanceof Ask.Serial serial) {
            return serial(serial, reply);
        }
        if (ask instanceof Ask.Lot lot) {
            return text(reply.lot(), 60)
                    .map(said -> Judged.answered(new StationSaying.LotUsed(about, basis, lot.part(), said)))
                    .orElse(Judged.faulty("lot", "station.lotMissing"));
        }
        if (ask instanceof Ask.Quantity quantity) {
            return quantity(quantity, reply);
        }
        if (ask instanceof Ask.Choice choice) {
            return choice(choice, reply);
        }
        if (ask instanceof Ask.Attended attended) {
            return attended(attended, reply);
        }
        if (ask instanceof Ask.Text text) {
            return text(reply.words(), text.maxLength())
                    .map(said -> Judged.answered(new StationSaying.Noted(about, basis, said)))
                    .orElse(Judged.faulty("words", "station.wordsMissing", text.maxLength()));
        }
        if (ask instanceof Ask.Wait wait) {
            return Judged.answered(new StationSaying.WaitBegun(about, basis, wait.minutes()));
        }
        if (ask instanceof Ask.Software software) {
            return software(software, reply);
        }
        if (ask instanceof Ask.File wanted) {
            return attached(reply, wanted.mediaTypes());
        }
        if (ask instanceof Ask.Photograph) {
            return attached(reply, List.of("image/jpeg", "image/png", "image/webp"));
        }
        throw new IllegalStateException("nobody judges " + ask);
    }

    private Judged measured(Ask.Measure ask, Reply reply) {
        return reply.reading()
                .map(reading -> Judged.answered(new StationSaying.Measured(
                        about,
                        basis,
                        reading,
                        ask.unit(),
                        ask.works(),
                        ask.legal(),
                        verdict(admits(ask.works(), reading) && admits(ask.legal(), reading)))))
                .orElse(Judged.faulty("reading", "station.readingMissing", ask.unit()));
    }

    private Judged tabled(Ask.Table ask, Reply reply) {
        int wanted = ask.rows().size() * ask.columns().size();
        if (reply.cells().size() != wanted) {
            return Judged.faulty(
                    "cells", "station.cellsMissing", wanted, reply.cells().size());
        }
        var outside = new ArrayList<StationSaying.CellOutside>();
        for (int i = 0; i < wanted; i++) {
            String row = ask.rows().get(i / ask.columns().size());
            Ask.Table.Column column = ask.columns().get(i % ask.columns().size());
            BigDecimal cell = reply.cells().get(i);
            column.legal()
                    .filter(limits -> !limits.admits(cell))
                    .ifPresent(limits -> outside.add(new StationSaying.CellOutside(row, column.title(), limits, true)));
            column.works()
                    .filter(limits -> !limits.admits(cell))
                    .ifPresent(
                            limits -> outside.add(new StationSaying.CellOutside(row, column.title(), limits, false)));
        }
        return Judged.answered(
                new StationSaying.Tabled(about, basis, reply.cells(), outside, verdict(outside.isEmpty())));
    }

    private Judged serial(Ask.Serial ask, Reply reply) {
        Optional<String> serial = text(reply.serial(), 60);
        if (serial.isEmpty()) {
            return Judged.faulty("serial", "station.serialMissing");
        }
        if (ask.pattern().filter(form -> !Pattern.matches(form, serial.get())).isPresent()) {
            return Judged.faulty(
                    "serial", "station.serialForm", serial.get(), ask.pattern().get());
        }
        return Judged.answered(new StationSaying.SerialRead(about, basis, ask.part(), serial.get()));
    }

    private Judged quantity(Ask.Quantity ask, Reply reply) {
        return reply.quantity()
                .map(quantity -> Judged.answered(new StationSaying.Counted(
                        about,
                        basis,
                        quantity,
                        ask.unit(),
                        ask.expected(),
                        verdict(ask.expected()
                                .map(wanted -> wanted.compareTo(quantity) == 0)
                                .orElse(true)))))
                .orElse(Judged.faulty("quantity", "station.quantityMissing", ask.unit()));
    }

    private Judged choice(Ask.Choice ask, Reply reply) {
        return reply.choice()
                .flatMap(text -> ask.options().stream()
                        .filter(option -> option.text().equals(text))
                        .findFirst())
                .map(option -> Judged.answered(
                        new StationSaying.Chosen(about, basis, option.text(), verdict(option.passes()))))
                .orElse(Judged.faulty("choice", "station.choiceMissing"));
    }

    private Judged attended(Ask.Attended ask, Reply reply) {
        Optional<Ask.Choice.Option> found = reply.choice()
                .flatMap(text -> ask.options().stream()
                        .filter(option -> option.text().equals(text))
                        .findFirst());
        Optional<String> place = text(reply.reading("place"), 80);
        Optional<String> second = text(reply.reading("second"), 80);
        if (found.isEmpty()) {
            return Judged.faulty("choice", "station.choiceMissing");
        }
        if (place.isEmpty()) {
            return Judged.faulty("place", "station.placeMissing");
        }
        return second.map(person -> Judged.answered(new StationSaying.Attended(
                        about,
                        basis,
                        found.get().text(),
                        place.get(),
                        person,
                        verdict(found.get().passes()))))
                .orElse(Judged.faulty("second", "station.secondMissing"));
    }

    private Judged software(Ask.Software ask, Reply reply) {
        return text(reply.version(), 60)
                .map(version -> Judged.answered(new StationSaying.SoftwareRead(
                        about, basis, ask.module(), version, ask.version(), verdict(version.equals(ask.version())))))
                .orElse(Judged.faulty("version", "station.versionMissing", ask.module()));
    }

    private Judged attached(Reply reply, List<String> mediaTypes) {
        Optional<EvidenceFile> handedIn = reply.sha256().flatMap(file::file);
        if (handedIn.isEmpty()) {
            return Judged.faulty("file", "station.fileMissing");
        }
        return mediaTypes.contains(handedIn.get().mediaType())
                ? Judged.answered(new StationSaying.Attached(about, basis, handedIn.get()))
                : Judged.faulty("file", "station.fileType", handedIn.get().mediaType(), String.join(", ", mediaTypes));
    }

    private static Optional<String> text(Optional<String> typed, int longest) {
        return typed.map(String::strip).filter(text -> !text.isEmpty() && text.length() <= longest);
    }

    private static boolean admits(Optional<Limits> limits, BigDecimal reading) {
        return limits.map(known -> known.admits(reading)).orElse(true);
    }

    static Verdict verdict(boolean passes) {
        return passes ? Verdict.PASS : Verdict.FAIL;
    }
}
