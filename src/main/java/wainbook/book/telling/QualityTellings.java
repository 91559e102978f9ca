package wainbook.book.telling;

import wainbook.page.Words;
import wainbook.quality.QualitySaying.OperatorNoted;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.QualitySaying.ReadingsDoubted;
import wainbook.quality.QualitySaying.Sureness;

/** How readings in doubt are told, and what was decided of them. */
final class QualityTellings {

    private QualityTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(ReadingsDoubted.class, (said, names) -> doubted(said));
        tellings.on(
                ReadingsDecided.class,
                (said, names) -> Told.of(Words.of(
                        "book.readingsDecided",
                        said.places().size(),
                        Words.of("quality.disposition." + said.disposition().name()),
                        said.reason(),
                        said.containment())));
        tellings.on(
                OperatorNoted.class,
                (said, names) -> Told.of(Words.of(
                        "book.operatorNoted",
                        Words.of("quality.word." + said.word().name()),
                        said.what(),
                        said.containment())));
    }

    private static Told doubted(ReadingsDoubted said) {
        long sureOut = count(said, Sureness.SURE_OUT);
        long safe = count(said, Sureness.SAFE);
        return Told.of(Words.of(
                "book.readingsDoubted", said.containment(), said.readings().size() - safe, sureOut, safe));
    }

    private static long count(ReadingsDoubted said, Sureness verdict) {
        return said.readings().stream()
                .filter(reading -> reading.verdict() == verdict)
                .count();
    }
}
