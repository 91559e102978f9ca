package wainbook.page;

import java.util.Optional;

/**
 * One leaf of a long list.
 *
 * @param number from 1
 * @param size rows on a page, 1 or more
 * @param rows rows in the whole list
 * @param path the list's address with its filter, ready for one more parameter
 */
public record Leaf(int number, int size, long rows, String path) {

    public Leaf {
        if (number < 1 || size < 1 || rows < 0) {
            throw new IllegalArgumentException("a list has pages of at least one row, counted from 1");
        }
    }

    public int last() {
        return (int) Math.max(1, (rows + size - 1) / size);
    }

    public long from() {
        return rows == 0 ? 0 : (number - 1L) * size + 1;
    }

    public long to() {
        return Math.min(rows, (long) number * size);
    }

    public Optional<String> previous() {
        return number > 1 ? Optional.of(at(number - 1)) : Optional.empty();
    }

    public Optional<String> following() {
        return number < last() ? Optional.of(at(number + 1)) : Optional.empty();
    }

    private String at(int page) {
        return path + (path.contains("?") ? "&" : "?") + "page=" + page;
    }
}
