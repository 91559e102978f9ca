package wainbook.line.balance.asked;

/** Where an item may be: from one place along the line to another, counted from 1. */
record Span(int first, int last) {

    boolean one() {
        return first == last;
    }

    boolean none() {
        return first > last;
    }

    Span from(int place) {
        return new Span(Math.max(first, place), last);
    }

    Span until(int place) {
        return new Span(first, Math.min(last, place));
    }
}
