package wainbook.paper;

import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wainbook.isolation.paper.IsolationForm;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.paper.PaperSaying.IsolationTranscribed;
import wainbook.paper.PaperSaying.ItemsTranscribed;
import wainbook.paper.PaperSaying.PermitTranscribed;
import wainbook.paper.PaperSaying.Transcribed;
import wainbook.permit.PermitForm;
import wainbook.station.paper.PaperLine;

/** What stands on a filled-in form, by its sort. */
public sealed interface Written {

    Sort sort();

    /** Everybody named on it, by number. */
    Set<String> people();

    /** Every time at which something was done. */
    List<Instant> times();

    Transcribed as(int form, int transcription, String vehicle, EvidenceFile photograph);

    static Written of(Transcribed said) {
        if (said instanceof ItemsTranscribed items) {
            return new Items(items.lines());
        }
        return said instanceof IsolationTranscribed isolation
                ? new Isolation(isolation.written())
                : new Permit(((PermitTranscribed) said).written());
    }

    /** Lines about check items. */
    record Items(List<PaperLine> lines) implements Written {
        public Items {
            lines = List.copyOf(lines);
        }

        @Override
        public Sort sort() {
            return Sort.ITEMS;
        }

        @Override
        public Set<String> people() {
            var people = new LinkedHashSet<String>();
            lines.forEach(line -> people.add(line.doer()));
            return people;
        }

        @Override
        public List<Instant> times() {
            return lines.stream().map(PaperLine::doneAt).toList();
        }

        @Override
        public Transcribed as(int form, int transcription, String vehicle, EvidenceFile photograph) {
            return new ItemsTranscribed(form, transcription, vehicle, photograph, lines);
        }
    }

    /** An isolation. */
    record Isolation(IsolationForm form) implements Written {
        @Override
        public Sort sort() {
            return Sort.ISOLATION;
        }

        @Override
        public Set<String> people() {
            return form.people();
        }

        @Override
        public List<Instant> times() {
            return form.times();
        }

        @Override
        public Transcribed as(int number, int transcription, String vehicle, EvidenceFile photograph) {
            return new IsolationTranscribed(number, transcription, vehicle, photograph, form);
        }
    }

    /** A permit. */
    record Permit(PermitForm form) implements Written {
        @Override
        public Sort sort() {
            return Sort.PERMIT;
        }

        @Override
        public Set<String> people() {
            return Set.of(form.issuer()).contains(form.receiver())
                    ? Set.of(form.issuer())
                    : Set.of(form.issuer(), form.receiver());
        }

        @Override
        public List<Instant> times() {
            return form.times();
        }

        @Override
        public Transcribed as(int number, int transcription, String vehicle, EvidenceFile photograph) {
            return new PermitTranscribed(number, transcription, vehicle, photograph, form);
        }
    }
}
