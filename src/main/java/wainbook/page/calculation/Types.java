package wainbook.page.calculation;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;

/** Declared types, read with the annotations inside them. */
final class Types {

    private Types() {}

    static Class<?> raw(AnnotatedType type) {
        return (Class<?>) (type.getType() instanceof ParameterizedType several ? several.getRawType() : type.getType());
    }

    static AnnotatedType argument(AnnotatedType type, int index) {
        return ((AnnotatedParameterizedType) type).getAnnotatedActualTypeArguments()[index];
    }
}
