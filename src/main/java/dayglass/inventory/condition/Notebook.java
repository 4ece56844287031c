package dayglass.inventory.condition;

import dayglass.inventory.Units;
import dayglass.inventory.picture.Pictures;

/** The units, the notes on them, their pictures and the way to add a note. */
public record Notebook(Units units, ConditionNotes notes, Pictures pictures, NoteCondition noteCondition) {}
