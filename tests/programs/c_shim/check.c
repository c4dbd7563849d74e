/* The C interface from C99: the published values, the errors, and what a wrong call gets. */

#include <fitwright_c.h>
#include <stdio.h>

static int failed = 0;

#define CHECK(holds)                                                                                         \
    do                                                                                                       \
        if (!(holds)) {                                                                                      \
            ++failed;                                                                                        \
            fprintf(stderr, "line %d: not so: %s\n", __LINE__, #holds);                                      \
        }                                                                                                    \
    while (0)

static fitwright_error error;
static char buffer[400];

static fitwright_limits read_hole(const char* written) {
    fitwright_limits hole;
    FITWRIGHT_INIT(hole);
    CHECK(fitwright_read_hole(written, strlen(written), 0, &hole, &error) == FITWRIGHT_OK);
    return hole;
}

static fitwright_limits read_shaft(const char* written) {
    fitwright_limits shaft;
    FITWRIGHT_INIT(shaft);
    CHECK(fitwright_read_shaft(written, strlen(written), 0, &shaft, &error) == FITWRIGHT_OK);
    return shaft;
}

/* 12.018 is 12018000; for the tables below. */
#define UM(number) ((int64_t)(number)*1000)

static void layout(void) {
    CHECK(fitwright_c_version() == FITWRIGHT_C_VERSION);
    CHECK(fitwright_library_version() >= 100);
    CHECK(fitwright_sizeof_error() == sizeof(fitwright_error));
    CHECK(fitwright_sizeof_limits() == sizeof(fitwright_limits));
    CHECK(fitwright_sizeof_clearance() == sizeof(fitwright_clearance));
    CHECK(fitwright_sizeof_callout() == sizeof(fitwright_callout));
    CHECK(fitwright_sizeof_drill() == sizeof(fitwright_drill));
    CHECK(fitwright_sizeof_gauge() == sizeof(fitwright_gauge));
    CHECK(fitwright_sizeof_measured() == sizeof(fitwright_measured));
    CHECK(fitwright_sizeof_offset() == sizeof(fitwright_offset));
    CHECK(fitwright_sizeof_step() == sizeof(fitwright_step));
}

static void limits_and_fits(void) {
    /* ISO 286-2: 25 H7 is 25.000 to 25.021, 25 g6 is 24.980 to 24.993. */
    fitwright_limits hole = read_hole("25 H7");
    fitwright_limits shaft = read_shaft("25 g6");
    fitwright_limits again;
    fitwright_clearance room;
    CHECK(hole.part == FITWRIGHT_HOLE && hole.nominal_nm == UM(25000));
    CHECK(hole.lower_limit_nm == UM(25000) && hole.upper_limit_nm == UM(25021));
    CHECK(hole.confidence == FITWRIGHT_PUBLISHED && strncmp(hole.source, "ISO 286-1:2010", 14) == 0);
    CHECK(shaft.part == FITWRIGHT_SHAFT);
    CHECK(shaft.lower_limit_nm == UM(24980) && shaft.upper_limit_nm == UM(24993));

    /* The same by class. */
    FITWRIGHT_INIT(again);
    CHECK(fitwright_class_limits(UM(25000), "H7", 2, &again, &error) == 0);
    CHECK(memcmp(&again, &hole, sizeof hole) == 0);
    CHECK(fitwright_class_limits(UM(25000), "g6", 2, &again, &error) == 0);
    CHECK(memcmp(&again, &shaft, sizeof shaft) == 0);
    CHECK(fitwright_class_limits(UM(25000), "7H", 2, &again, &error) == FITWRIGHT_CLASS_ALONE_WANTED);
    CHECK(fitwright_class_limits(UM(4000000), "H7", 2, &again, &error) == FITWRIGHT_SIZE_OUT_OF_RANGE);

    /* ISO 286-2: 12 H7/g6 leaves 6 to 35 um. */
    FITWRIGHT_INIT(room);
    CHECK(fitwright_read_fit("12 H7/g6", 8, 0, &hole, &shaft, &error) == 0);
    CHECK(fitwright_find_clearance(&hole, &shaft, &room, &error) == 0);
    CHECK(room.least_nm == UM(6) && room.greatest_nm == UM(35) && room.mean_nm == 20500);
    CHECK(room.kind == FITWRIGHT_CLEARANCE);
    CHECK(fitwright_find_clearance(&shaft, &hole, &room, &error) == FITWRIGHT_HOLE_WANTED);
    CHECK(fitwright_find_clearance(&hole, &hole, &room, &error) == FITWRIGHT_SHAFT_WANTED);

    /* ANSI B4.1: RC4 over 0.40 up to 0.71 in is +1.0/0 and -0.6/-1.3 thou. */
    CHECK(fitwright_read_fit("1/2 in RC4", 10, 0, &hole, &shaft, &error) == 0);
    CHECK(hole.lower_limit_nm == 12700000 && hole.upper_limit_nm == 12700000 + 25400);
    CHECK(shaft.lower_limit_nm == 12700000 - 13 * 2540 && shaft.upper_limit_nm == 12700000 - 6 * 2540);
}

static void callouts(void) {
    fitwright_callout callout;
    fitwright_limits hole;
    fitwright_limits shaft;
    FITWRIGHT_INIT(callout);
    FITWRIGHT_INIT(hole);
    FITWRIGHT_INIT(shaft);

    CHECK(fitwright_read_callout("2x 6 H7 (E) THRU", 16, 0, &callout, &hole, &shaft, &error) == 0);
    CHECK(callout.part == FITWRIGHT_HOLE && callout.count == 2 && callout.unit == FITWRIGHT_MM);
    CHECK(callout.notes == (FITWRIGHT_HOLE_ENVELOPE | FITWRIGHT_THROUGH));
    CHECK(callout.nominal_nm == UM(6000) && strcmp(callout.hole_class, "H7") == 0);
    CHECK(callout.shaft_class[0] == '\0' && callout.inch_fit[0] == '\0');
    CHECK(hole.upper_limit_nm == UM(6012) && shaft.part == 0 && shaft.upper_limit_nm == 0);

    CHECK(fitwright_read_callout("\xE2\x8C\x80"
                                 "12 g6 DEPTH 5",
                                 16, 0, &callout, &hole, &shaft, &error) == 0);
    CHECK(callout.part == FITWRIGHT_SHAFT && strcmp(callout.shaft_class, "g6") == 0);
    CHECK(callout.notes == (FITWRIGHT_DIAMETER_SIGN | FITWRIGHT_HAS_DEPTH) && callout.depth_nm == UM(5000));
    CHECK(hole.part == 0 && shaft.upper_limit_nm == UM(11994));

    CHECK(fitwright_read_callout("14 +0.018/0", 11, 0, &callout, &hole, &shaft, &error) == 0);
    CHECK(callout.part == FITWRIGHT_EITHER && hole.part == FITWRIGHT_HOLE && shaft.part == FITWRIGHT_SHAFT);
    CHECK(hole.upper_limit_nm == UM(14018) && hole.confidence == FITWRIGHT_STATED);

    CHECK(fitwright_read_callout("0.5 in RC4", 10, 0, &callout, &hole, &shaft, &error) == 0);
    CHECK(callout.part == FITWRIGHT_FIT && strcmp(callout.inch_fit, "RC4") == 0 &&
          callout.unit == FITWRIGHT_IN);

    /* The length counts, not a zero: one stands behind the H here. */
    CHECK(fitwright_read_hole("12 H7x", 5, 0, &hole, &error) == 0);
    CHECK(fitwright_read_hole("12 H\0007", 4, 0, &hole, &error) == FITWRIGHT_GRADE_MISSING);
    CHECK(fitwright_read_hole("12,5 H7", 7, FITWRIGHT_DECIMAL_COMMA, &hole, &error) == 0);
    CHECK(hole.nominal_nm == UM(12500));
}

static void bad_callouts(void) {
    fitwright_limits hole = read_hole("12 H7");
    const fitwright_limits before = hole;

    CHECK(fitwright_read_hole("\xE2\x8C\x80"
                              "12 Q7",
                              8, 0, &hole, &error) == FITWRIGHT_LETTER_NOT_USED);
    CHECK(error.code == FITWRIGHT_LETTER_NOT_USED && error.column == 5 && error.byte_column == 7);
    CHECK(error.message_size == strlen(error.message) && strstr(error.message, "'Q'") != NULL);
    CHECK(fitwright_write_suggestion(&error, buffer, sizeof buffer) == 0 && buffer[0] == '\0');

    CHECK(fitwright_read_hole("12,5 H7", 7, 0, &hole, &error) == FITWRIGHT_DECIMAL_COMMA_NOT_ALLOWED);
    CHECK(error.column == 1);
    CHECK(fitwright_read_hole("", 0, 0, &hole, &error) == FITWRIGHT_TEXT_IS_EMPTY);
    CHECK(fitwright_read_hole(NULL, 0, 0, &hole, &error) == FITWRIGHT_TEXT_IS_EMPTY);
    CHECK(fitwright_read_hole("12 H7\xFF", 6, 0, &hole, &error) == FITWRIGHT_TEXT_IS_NOT_UTF8);

    /* A shaft's class on a hole, and what to write instead. */
    CHECK(fitwright_read_hole("12 h7", 5, 0, &hole, &error) == FITWRIGHT_HOLE_WANTED);
    CHECK(error.column == 4);
    CHECK(fitwright_write_suggestion(&error, buffer, sizeof buffer) == 5 && strcmp(buffer, "12 H7") == 0);
    CHECK(fitwright_write_message(&error, buffer, sizeof buffer) == (int32_t)strlen(error.message));
    CHECK(strcmp(buffer, error.message) == 0);

    CHECK(memcmp(&hole, &before, sizeof hole) == 0); /* nothing but the error was written to */
    CHECK(fitwright_read_hole("12 h7", 5, 0, &hole, NULL) == FITWRIGHT_HOLE_WANTED);
    read_hole("12 H7");
    CHECK(error.code == FITWRIGHT_OK && error.column == 0 && error.message[0] == '\0');
}

static void digits(void) {
    const fitwright_limits bore = read_hole("14 H7");
    const fitwright_limits narrow = read_hole("14 +0.0005/+0.0001");
    size_t room;

    CHECK(fitwright_write_nearest(UM(12018), FITWRIGHT_MM, -1, buffer, sizeof buffer, &error) == 6);
    CHECK(strcmp(buffer, "12.018") == 0);
    CHECK(fitwright_write_nearest(UM(14018), FITWRIGHT_IN, 4, buffer, sizeof buffer, &error) == 6);
    CHECK(strcmp(buffer, "0.5519") == 0);
    CHECK(fitwright_write_nearest(-6000, FITWRIGHT_UM, 0, buffer, sizeof buffer, &error) == 2);
    CHECK(strcmp(buffer, "-6") == 0);

    /* 14.000 to 14.018 mm is 0.55118 to 0.55189 in. */
    CHECK(fitwright_write_lower_inwards(&bore, FITWRIGHT_IN, 4, buffer, sizeof buffer, &error) == 6);
    CHECK(strcmp(buffer, "0.5512") == 0);
    CHECK(fitwright_write_upper_inwards(&bore, FITWRIGHT_IN, 4, buffer, sizeof buffer, &error) == 6);
    CHECK(strcmp(buffer, "0.5518") == 0);
    CHECK(fitwright_write_upper_inwards(&bore, FITWRIGHT_MM, 3, buffer, sizeof buffer, &error) == 6);
    CHECK(strcmp(buffer, "14.018") == 0);
    CHECK(fitwright_write_upper_inwards(&bore, FITWRIGHT_IN, 6, buffer, 9, &error) ==
          FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_write_lower_inwards(&narrow, FITWRIGHT_MM, 3, buffer, 9, &error) ==
          FITWRIGHT_NOTHING_ON_THE_GRID);

    /* Too small a buffer: the needed length, a terminated beginning, nothing behind the end. */
    for (room = 0; room <= 8; ++room) {
        memset(buffer, '#', sizeof buffer);
        CHECK(fitwright_write_nearest(UM(12018), FITWRIGHT_MM, 3, buffer, room, &error) == 6);
        CHECK(room == 0 || memcmp(buffer, "12.018", room <= 6 ? room - 1 : 6) == 0);
        CHECK(room == 0 || buffer[room <= 6 ? room - 1 : 6] == '\0');
        CHECK(buffer[room] == '#');
    }
    CHECK(fitwright_write_nearest(UM(12018), FITWRIGHT_MM, 3, NULL, 0, &error) == 6);
}

/* A message with a letter of two bytes in it, cut everywhere: never inside the letter. */
static void cut_text(void) {
    fitwright_limits hole;
    int32_t needed;
    size_t room;
    const char* psi;
    FITWRIGHT_INIT(hole);
    CHECK(fitwright_read_hole("12 \xCE\xA8"
                              "7",
                              6, 0, &hole, &error) < 0);
    psi = strstr(error.message, "\xCE\xA8");
    CHECK(psi != NULL);
    needed = fitwright_write_message(&error, NULL, 0);
    CHECK(needed == (int32_t)strlen(error.message));
    for (room = 1; psi != NULL && room <= (size_t)needed + 1; ++room) {
        const size_t inside = (size_t)(psi - error.message) + 2; /* so much room ends between its bytes */
        const size_t kept = room == inside ? room - 2 : room - 1;
        CHECK(fitwright_write_message(&error, buffer, room) == needed);
        CHECK(strlen(buffer) == kept && memcmp(buffer, error.message, kept) == 0);
    }
}

static void grids_and_tools(void) {
    const fitwright_limits bore = read_hole("14 H7");
    fitwright_limits made;
    fitwright_drill drill;
    int64_t target = 0;
    FITWRIGHT_INIT(made);
    FITWRIGHT_INIT(drill);

    CHECK(fitwright_round_inwards(&bore, 2540, &made, &error) == 0);
    CHECK(made.lower_limit_nm == 5512 * 2540 && made.upper_limit_nm == 5518 * 2540);
    CHECK(made.nominal_nm == UM(14000) && strcmp(made.source, bore.source) == 0);
    CHECK(fitwright_round_inwards(&made, UM(1), &made, &error) == 0); /* into itself */
    CHECK(made.lower_limit_nm == UM(14001) && made.upper_limit_nm == UM(14015));
    CHECK(fitwright_round_inwards(&bore, 0, &made, &error) == FITWRIGHT_STEP_NOT_ABOVE_ZERO);

    CHECK(fitwright_find_target(&bore, UM(2), &target, &error) == 0); /* of 14.008 and 14.010 */
    CHECK(target == UM(14008));
    CHECK(fitwright_find_target(&bore, UM(4), &target, &error) == 0 && target == UM(14008));
    CHECK(fitwright_find_target(&bore, UM(5000), &target, &error) == FITWRIGHT_NOTHING_ON_THE_GRID);

    /* DIN 1420: the reamer for 10 D8 (+62/+40) is 10.050 to 10.058. */
    made = read_hole("10 D8");
    CHECK(fitwright_find_reamer(&made, &made, &error) == 0); /* into itself */
    CHECK(made.part == FITWRIGHT_TOOL && made.nominal_nm == UM(10000));
    CHECK(made.lower_limit_nm == UM(10050) && made.upper_limit_nm == UM(10058));
    CHECK(strncmp(made.source, "DIN 1420", 8) == 0);
    CHECK(fitwright_find_reamer(&made, &made, &error) == FITWRIGHT_NUMBER_UNKNOWN); /* a tool is no hole */
    made = read_hole("10 +0.001/0");
    CHECK(fitwright_find_reamer(&made, &made, &error) == FITWRIGHT_TOOL_NOT_KNOWN);
    made = read_shaft("10 g6");
    CHECK(fitwright_find_reamer(&made, &made, &error) == FITWRIGHT_HOLE_WANTED);

    /* A trade-school note: 0.2 to 0.3 mm for a hand reamer, a drill counted to cut 0.05 over. */
    CHECK(fitwright_find_drill_under_reamer(UM(10000), FITWRIGHT_METRIC, FITWRIGHT_BY_HAND, FITWRIGHT_STEEL,
                                            &drill, &error) == 0);
    CHECK(drill.diameter_nm == UM(9700) && strcmp(drill.name, "9.7 mm") == 0);
    CHECK(drill.series == FITWRIGHT_METRIC && strstr(drill.source, "stock for hand reaming") != NULL);
    CHECK(fitwright_find_drill_under_reamer(UM(10000), FITWRIGHT_METRIC, FITWRIGHT_BY_HAND,
                                            FITWRIGHT_ALUMINIUM, &drill, &error) == 0);
    CHECK(drill.diameter_nm < UM(9700)); /* light metals: half as much again */
    CHECK(fitwright_find_drill_under_reamer(0, FITWRIGHT_METRIC, FITWRIGHT_BY_MACHINE, FITWRIGHT_STEEL,
                                            &drill, &error) == FITWRIGHT_SIZE_OUT_OF_RANGE);

    /* ASME B94.11M: #5 is 0.2055 in, #4 is 0.2090 in. */
    CHECK(fitwright_find_largest_drill_under(5308600, FITWRIGHT_NUMBER, &drill, &error) == 0);
    CHECK(drill.diameter_nm == 2055 * 2540 && strcmp(drill.name, "#5") == 0);
    CHECK(fitwright_find_largest_drill_under(UM(10), FITWRIGHT_LETTER, &drill, &error) ==
          FITWRIGHT_SIZE_OUT_OF_RANGE);
}

static void gauges_and_readings(void) {
    const fitwright_limits hole = read_hole("14 H7");
    const fitwright_limits shaft = read_shaft("14 s6");
    const fitwright_limits odd = read_hole("14 +0.017/0");
    fitwright_gauge gauge;
    fitwright_limits readings;
    fitwright_measured part;
    int32_t verdict = 0;
    FITWRIGHT_INIT(gauge);
    FITWRIGHT_INIT(readings);
    FITWRIGHT_INIT(part);

    /* ISO/R 1938: 14 H7 has z 2.5, y 2, H 3 um. */
    CHECK(fitwright_find_plug_gauge(&hole, &gauge, &error) == 0);
    CHECK(gauge.go_lower_nm == UM(14001) && gauge.go_upper_nm == UM(14004) && gauge.worn_nm == UM(13998));
    CHECK(gauge.not_go_lower_nm == 14016500 && gauge.not_go_upper_nm == 14019500);
    CHECK(strncmp(gauge.source, "ISO/R 1938:1971", 15) == 0 && gauge.take_care != 0);
    CHECK(fitwright_write_caution(gauge.take_care, buffer, sizeof buffer, &error) > 0);
    CHECK(strncmp(buffer, "Turning parts catch", 19) == 0);

    /* 14 s6 has z1 2.5, y1 2, H1 3 um. */
    CHECK(fitwright_find_ring_gauge(&shaft, &gauge, &error) == 0);
    CHECK(gauge.go_lower_nm == UM(14035) && gauge.go_upper_nm == UM(14038) && gauge.worn_nm == UM(14041));
    CHECK(gauge.not_go_lower_nm == 14026500 && gauge.not_go_upper_nm == 14029500);
    CHECK(fitwright_find_plug_gauge(&shaft, &gauge, &error) == FITWRIGHT_HOLE_WANTED);
    CHECK(fitwright_find_ring_gauge(&hole, &gauge, &error) == FITWRIGHT_SHAFT_WANTED);
    CHECK(fitwright_find_plug_gauge(&odd, &gauge, &error) == FITWRIGHT_NO_STANDARD_TOLERANCE);

    part.uncertainty_nm = UM(4);
    part.reading_nm = UM(14014);
    CHECK(fitwright_judge(&hole, &part, &verdict, &error) == 0 && verdict == FITWRIGHT_ACCEPT);
    part.reading_nm = UM(14015);
    CHECK(fitwright_judge(&hole, &part, &verdict, &error) == 0 && verdict == FITWRIGHT_CANNOT_TELL);
    part.reading_nm = UM(14023);
    CHECK(fitwright_judge(&hole, &part, &verdict, &error) == 0 && verdict == FITWRIGHT_REJECT);
    part.uncertainty_nm = -1;
    CHECK(fitwright_judge(&hole, &part, &verdict, &error) == FITWRIGHT_NUMBER_UNKNOWN);

    CHECK(fitwright_find_acceptance(&hole, UM(4), &readings, &error) == 0);
    CHECK(readings.lower_limit_nm == UM(14004) && readings.upper_limit_nm == UM(14014));
    CHECK(readings.part == FITWRIGHT_HOLE && readings.confidence == FITWRIGHT_MEMORY);
    CHECK(fitwright_find_acceptance(&hole, UM(10), &readings, &error) == FITWRIGHT_INSTRUMENT_TOO_COARSE);
    CHECK(fitwright_write_confidence(readings.confidence, buffer, sizeof buffer, &error) > 0);
    CHECK(strcmp(buffer, "from memory of the document") == 0);
}

static void offsets(void) {
    const fitwright_limits bore = read_hole("12 H7");
    fitwright_measured trial;
    fitwright_offset offset;
    fitwright_step step;
    FITWRIGHT_INIT(trial);
    FITWRIGHT_INIT(offset);
    FITWRIGHT_INIT(step);
    offset.across = FITWRIGHT_RADIUS;
    offset.sense =
        FITWRIGHT_LARGER_MAKES_SMALLER; /* the radius of a mill in a pocket: smaller bores larger */
    offset.increment_nm = UM(1);
    offset.largest_change_nm = UM(50);

    /* 59 um to go on the diameter: 29 whole um on the radius. */
    trial.reading_nm = UM(11950);
    CHECK(fitwright_find_offset_to_recut(&bore, &trial, UM(12009), &offset, &step, &error) == 0);
    CHECK(step.change_nm == -UM(29) && step.expected_nm == UM(12008) && step.is_clamped == 0);
    CHECK(step.take_care != 0);

    /* The same told of the diameter by a register in which larger makes larger. */
    offset.across = FITWRIGHT_DIAMETER;
    offset.sense = FITWRIGHT_LARGER_MAKES_LARGER;
    CHECK(fitwright_find_offset_to_recut(&bore, &trial, UM(12009), &offset, &step, &error) == 0);
    CHECK(step.change_nm == UM(50) && step.expected_nm == UM(12000) && step.is_clamped == 1);

    trial.reading_nm = UM(12015);
    CHECK(fitwright_find_offset_for_next_part(&bore, &trial, UM(12009), &offset, &step, &error) == 0);
    CHECK(step.change_nm == -UM(6) && step.expected_nm == UM(12009));
    CHECK(fitwright_find_offset_to_recut(&bore, &trial, UM(12009), &offset, &step, &error) == 0);
    CHECK(step.change_nm == 0);

    trial.reading_nm = UM(12019);
    CHECK(fitwright_find_offset_to_recut(&bore, &trial, UM(12009), &offset, &step, &error) ==
          FITWRIGHT_CUT_TOO_FAR_ALREADY);
    CHECK(fitwright_find_offset_to_recut(&bore, &trial, UM(12020), &offset, &step, &error) ==
          FITWRIGHT_AIM_OUTSIDE_LIMITS);
    offset.largest_change_nm = 999;
    CHECK(fitwright_find_offset_to_recut(&bore, &trial, UM(12009), &offset, &step, &error) ==
          FITWRIGHT_CHANGE_BELOW_INCREMENT);
    offset.sense = 0;
    CHECK(fitwright_find_offset_to_recut(&bore, &trial, UM(12009), &offset, &step, &error) ==
          FITWRIGHT_NUMBER_UNKNOWN);
}

/* Every pointer null, every struct of a wrong size or version: a code, not a crash. */
static void wrong_calls(void) {
    const fitwright_limits hole = read_hole("12 H7");
    const fitwright_limits shaft = read_shaft("12 g6");
    fitwright_limits limits, other;
    fitwright_clearance room;
    fitwright_callout callout;
    fitwright_drill drill;
    fitwright_gauge gauge;
    fitwright_measured part;
    fitwright_offset offset;
    fitwright_step step;
    int64_t target;
    int32_t verdict;
    FITWRIGHT_INIT(limits);
    FITWRIGHT_INIT(other);
    FITWRIGHT_INIT(room);
    FITWRIGHT_INIT(callout);
    FITWRIGHT_INIT(drill);
    FITWRIGHT_INIT(gauge);
    FITWRIGHT_INIT(part);
    FITWRIGHT_INIT(offset);
    FITWRIGHT_INIT(step);
    offset.across = FITWRIGHT_RADIUS;
    offset.sense = FITWRIGHT_LARGER_MAKES_LARGER;
    offset.increment_nm = offset.largest_change_nm = 1;

#define NULL_POINTER(call) CHECK((call) == FITWRIGHT_NULL_POINTER && error.code == FITWRIGHT_NULL_POINTER)
    NULL_POINTER(fitwright_read_hole(NULL, 5, 0, &limits, &error));
    NULL_POINTER(fitwright_read_hole("12 H7", 5, 0, NULL, &error));
    NULL_POINTER(fitwright_read_shaft("12 g6", 5, 0, NULL, &error));
    NULL_POINTER(fitwright_read_fit("12 H7/g6", 8, 0, NULL, &limits, &error));
    NULL_POINTER(fitwright_read_fit("12 H7/g6", 8, 0, &limits, NULL, &error));
    NULL_POINTER(fitwright_read_callout("12 H7", 5, 0, NULL, &limits, &other, &error));
    NULL_POINTER(fitwright_read_callout("12 H7", 5, 0, &callout, NULL, &other, &error));
    NULL_POINTER(fitwright_read_callout("12 H7", 5, 0, &callout, &limits, NULL, &error));
    NULL_POINTER(fitwright_class_limits(UM(12000), NULL, 2, &limits, &error));
    NULL_POINTER(fitwright_class_limits(UM(12000), "H7", 2, NULL, &error));
    NULL_POINTER(fitwright_find_clearance(NULL, &shaft, &room, &error));
    NULL_POINTER(fitwright_find_clearance(&hole, NULL, &room, &error));
    NULL_POINTER(fitwright_find_clearance(&hole, &shaft, NULL, &error));
    NULL_POINTER(fitwright_round_inwards(NULL, 1, &limits, &error));
    NULL_POINTER(fitwright_round_inwards(&hole, 1, NULL, &error));
    NULL_POINTER(fitwright_find_target(NULL, 1, &target, &error));
    NULL_POINTER(fitwright_find_target(&hole, 1, NULL, &error));
    NULL_POINTER(fitwright_write_nearest(1, FITWRIGHT_MM, -1, NULL, 1, &error));
    NULL_POINTER(fitwright_write_lower_inwards(NULL, FITWRIGHT_MM, -1, buffer, 1, &error));
    NULL_POINTER(fitwright_write_upper_inwards(&hole, FITWRIGHT_MM, -1, NULL, 1, &error));
    NULL_POINTER(fitwright_find_reamer(NULL, &limits, &error));
    NULL_POINTER(fitwright_find_reamer(&hole, NULL, &error));
    NULL_POINTER(fitwright_find_drill_under_reamer(UM(10000), 1, 1, 1, NULL, &error));
    NULL_POINTER(fitwright_find_largest_drill_under(UM(10000), 1, NULL, &error));
    NULL_POINTER(fitwright_find_plug_gauge(NULL, &gauge, &error));
    NULL_POINTER(fitwright_find_plug_gauge(&hole, NULL, &error));
    NULL_POINTER(fitwright_find_ring_gauge(NULL, &gauge, &error));
    NULL_POINTER(fitwright_find_ring_gauge(&shaft, NULL, &error));
    NULL_POINTER(fitwright_judge(NULL, &part, &verdict, &error));
    NULL_POINTER(fitwright_judge(&hole, NULL, &verdict, &error));
    NULL_POINTER(fitwright_judge(&hole, &part, NULL, &error));
    NULL_POINTER(fitwright_find_acceptance(NULL, 1, &limits, &error));
    NULL_POINTER(fitwright_find_acceptance(&hole, 1, NULL, &error));
    NULL_POINTER(fitwright_find_offset_to_recut(NULL, &part, 1, &offset, &step, &error));
    NULL_POINTER(fitwright_find_offset_to_recut(&hole, NULL, 1, &offset, &step, &error));
    NULL_POINTER(fitwright_find_offset_to_recut(&hole, &part, 1, NULL, &step, &error));
    NULL_POINTER(fitwright_find_offset_for_next_part(&hole, &part, 1, &offset, NULL, &error));
    NULL_POINTER(fitwright_write_caution(1, NULL, 1, &error));
    NULL_POINTER(fitwright_write_confidence(1, NULL, 1, &error));
    CHECK(fitwright_write_message(NULL, buffer, 1) == FITWRIGHT_NULL_POINTER);
    CHECK(fitwright_write_suggestion(&error, NULL, 1) == FITWRIGHT_NULL_POINTER);
    CHECK(fitwright_find_plug_gauge(NULL, NULL, NULL) == FITWRIGHT_NULL_POINTER);

    limits.size -= 8;
    CHECK(fitwright_read_hole("12 H7", 5, 0, &limits, &error) == FITWRIGHT_STRUCT_SIZE);
    CHECK(strstr(error.message, "168") != NULL);
    CHECK(fitwright_find_reamer(&limits, &other, &error) == FITWRIGHT_STRUCT_SIZE);
    limits.size += 8;
    limits.version = 2;
    CHECK(fitwright_read_hole("12 H7", 5, 0, &limits, &error) == FITWRIGHT_STRUCT_VERSION);
    limits.version = 1;
    error.size = 0; /* a wrong error is not written to */
    CHECK(fitwright_read_hole("12 H7", 5, 0, &limits, &error) == FITWRIGHT_STRUCT_SIZE && error.size == 0);
    CHECK(fitwright_write_message(&error, buffer, 9) == FITWRIGHT_STRUCT_SIZE);
    FITWRIGHT_INIT(error);

    /* Numbers that mean nothing; limits left zero, crossed, or beyond all lengths. */
    CHECK(fitwright_read_hole("12 H7", 5, 2, &limits, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_write_nearest(1, 0, -1, buffer, 9, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_write_nearest(1, 6, -1, buffer, 9, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_write_nearest(1, 1, 10, buffer, 9, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_find_largest_drill_under(1, 5, &drill, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_find_drill_under_reamer(1, 1, 3, 1, &drill, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_find_drill_under_reamer(1, 1, 1, 14, &drill, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_write_caution(128, buffer, 9, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_write_confidence(0, buffer, 9, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    CHECK(fitwright_find_target(&limits, 1, &target, &error) == FITWRIGHT_NUMBER_UNKNOWN);
    limits = hole;
    limits.upper_limit_nm = limits.lower_limit_nm - 1;
    CHECK(fitwright_find_target(&limits, 1, &target, &error) == FITWRIGHT_LIMITS_CROSSED);
    limits.upper_limit_nm = INT64_MAX;
    CHECK(fitwright_find_plug_gauge(&limits, &gauge, &error) == FITWRIGHT_LENGTH_TOO_LONG);
    CHECK(fitwright_class_limits(INT64_MIN, "H7", 2, &limits, &error) == FITWRIGHT_LENGTH_TOO_LONG);
    CHECK(fitwright_write_nearest(INT64_MIN, 1, -1, buffer, 9, &error) == FITWRIGHT_LENGTH_TOO_LONG);

    /* The longest there are: no overflow on the way (sanitizers look). */
    limits = hole;
    limits.lower_limit_nm = -1000000000000000;
    limits.upper_limit_nm = 1000000000000000;
    part.reading_nm = -1000000000000000;
    part.uncertainty_nm = 1000000000000000;
    offset.largest_change_nm = 1000000000000000;
    CHECK(fitwright_find_reamer(&limits, &other, &error) == FITWRIGHT_TOOL_NOT_KNOWN);
    CHECK(fitwright_round_inwards(&limits, 7, &other, &error) == 0);
    CHECK(fitwright_find_target(&limits, 7, &target, &error) == 0);
    CHECK(fitwright_judge(&limits, &part, &verdict, &error) == 0);
    CHECK(fitwright_find_acceptance(&limits, UM(1), &other, &error) == 0);
    CHECK(fitwright_find_plug_gauge(&limits, &gauge, &error) < 0);
    CHECK(fitwright_find_offset_to_recut(&limits, &part, limits.upper_limit_nm, &offset, &step, &error) == 0);
    CHECK(fitwright_find_offset_for_next_part(&limits, &part, limits.upper_limit_nm, &offset, &step,
                                              &error) == 0);
}

int main(void) {
    FITWRIGHT_INIT(error);
    layout();
    limits_and_fits();
    callouts();
    bad_callouts();
    digits();
    cut_text();
    grids_and_tools();
    gauges_and_readings();
    offsets();
    wrong_calls();
    if (failed == 0) puts("all holds");
    return failed == 0 ? 0 : 1;
}
