package wainbook.page.calculation;

import wainbook.engineering.Source;
import wainbook.page.Words;

/** A source as pages cite it, with how it is known. */
public record Cited(String document, String clause, String standing) {
    static Cited of(Source source) {
        return new Cited(source.document(), source.clause(), Words.of("engineering.standing." + source.standing()));
    }
}
