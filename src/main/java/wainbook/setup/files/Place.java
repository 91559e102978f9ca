package wainbook.setup.files;

import java.util.Optional;

/**
 * Where in a file.
 *
 * @param file its path inside the folder
 * @param line from 1
 * @param column from 1: of the character in YAML, of the cell in CSV
 * @param field the name of the field or column
 */
public record Place(String file, Optional<Integer> line, Optional<Integer> column, Optional<String> field) {

    static Place of(String file) {
        return new Place(file, Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Place at(String file, int line, int column) {
        return new Place(file, Optional.of(line), Optional.of(column), Optional.empty());
    }

    Place field(String name) {
        return new Place(file, line, column, Optional.of(name));
    }

    Place unnamed() {
        return new Place(file, line, column, Optional.empty());
    }

    @Override
    public String toString() {
        return file
                + line.map(number -> ":" + number).orElse("")
                + column.map(number -> ":" + number).orElse("")
                + field.map(name -> " (" + name + ")").orElse("");
    }
}
