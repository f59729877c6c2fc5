package thrumwright.commandline;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import thrumwright.measure.BadMeasure;
import thrumwright.measure.Length;
import thrumwright.measure.Unit;

/** Lengths as the weaver types them everywhere: with a unit or without, the decimal sign a point or a comma. */
final class TypedLength {
    private TypedLength() {}

    private static double mm(String text, Unit usual) {
        try {
            return Length.parse(text, usual).mm();
        } catch (BadMeasure refusal) {
            throw new TypeConversionException(refusal.getMessage());
        }
    }

    /** In metres, unless another unit is typed. */
    static final class Metres implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            return mm(text, Unit.METRE) / Unit.METRE.millimetres();
        }
    }

    /** In millimetres, unless another unit is typed. */
    static final class Millimetres implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            return mm(text, Unit.MILLIMETRE);
        }
    }
}
