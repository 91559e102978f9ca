package wainbook.ledger.bytes;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Optional;

/** Whether a record has everything: what may be absent is an Optional, so a null is a fault, in writing and in reading. */
public final class Whole {

    private static final ClassValue<RecordComponent[]> COMPONENTS = new ClassValue<>() {
        @Override
        protected RecordComponent[] computeValue(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            for (RecordComponent component : components) {
                component.getAccessor().setAccessible(true);
            }
            return components;
        }
    };

    private Whole() {}

    /** Throws {@link IllegalArgumentException} naming the first field that is missing. */
    public static <T> T check(T value) {
        check(value, value.getClass().getSimpleName());
        return value;
    }

    private static void check(Object value, String where) {
        if (value == null) {
            throw new IllegalArgumentException(where + " is missing");
        }
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(held -> check(held, where));
        } else if (value instanceof Collection<?> list) {
            list.forEach(held -> check(held, where));
        } else if (value instanceof Record) {
            for (RecordComponent component : COMPONENTS.get(value.getClass())) {
                check(read(component, value), where + "." + component.getName());
            }
        }
    }

    private static Object read(RecordComponent component, Object owner) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException notReadable) {
            throw new IllegalStateException("cannot read " + component, notReadable);
        }
    }
}
