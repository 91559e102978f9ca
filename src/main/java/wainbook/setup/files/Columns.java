package wainbook.setup.files;

import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The columns of a file, as the components of the record of one row say them. */
record Columns(List<String> all, List<String> required, List<String> lists) {

    static Columns of(Class<? extends Record> type) {
        return new Columns(
                names(type, component -> true),
                names(type, component -> component.getType() != Optional.class),
                names(type, component -> component.getType() == List.class));
    }

    private static List<String> names(Class<? extends Record> type, Predicate<RecordComponent> which) {
        var snake = new PropertyNamingStrategies.SnakeCaseStrategy();
        return Arrays.stream(type.getRecordComponents())
                .filter(which)
                .map(component -> snake.translate(component.getName()))
                .toList();
    }
}
