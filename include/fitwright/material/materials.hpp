#ifndef FITWRIGHT_MATERIAL_MATERIALS_HPP
#define FITWRIGHT_MATERIAL_MATERIALS_HPP

#include <fitwright/material/figures.hpp>
#include <fitwright/material/material.hpp>

namespace fitwright::detail {

/// The words that go with a line of `figures.hpp`.
struct material_words {
    material_family family;
    const char *name, *other_names, *condition, *documents, *heating_limit_reason = "", *remark = "";
};

[[nodiscard]] constexpr text words_of(const char* w) noexcept { return {w, __builtin_strlen(w)}; }

[[nodiscard]] constexpr confidence confidence_of(char letter) noexcept {
    return letter == 'p' ? confidence::published : letter == 'm' ? confidence::memory : confidence::uncertain;
}

[[nodiscard]] constexpr material on_shelf(const material_figures& f, const material_words& w) noexcept {
    using expansion = property<expansion_coefficient>;
    const confidence spread = confidence_of(f.how_sure[1]);
    return {
        .name = words_of(w.name),
        .family = w.family,
        .other_names = words_of(w.other_names),
        .condition = words_of(w.condition),
        .expansion = {.to_100_degC = expansion::printed(f.to_100_degC / 1e8, confidence_of(f.how_sure[0])),
                      .lowest = expansion::printed(f.lowest / 1e8, spread),
                      .highest = expansion::printed(f.highest / 1e8, spread),
                      .to_200_degC = expansion::printed(f.to_200_degC / 1e8, confidence_of(f.how_sure[2])),
                      .to_300_degC = expansion::printed(f.to_300_degC / 1e8, confidence_of(f.how_sure[3])),
                      .to_500_degC = expansion::printed(f.to_500_degC / 1e8, confidence_of(f.how_sure[4])),
                      .cooled_to_minus_190_degC =
                          expansion::printed(f.cooled_to_minus_190_degC / 1e8, confidence_of(f.how_sure[5]))},
        .youngs_modulus = property<pressure>::printed(f.youngs_modulus * 1e7, confidence_of(f.how_sure[7])),
        .poissons_ratio = property<double>::printed(f.poissons_ratio / 1e3, confidence_of(f.how_sure[8])),
        .density = property<mass_density>::printed(f.density, confidence_of(f.how_sure[9])),
        .yield_strength = property<pressure>::printed(f.yield_strength * 1e6, confidence_of(f.how_sure[11])),
        .least_yield_strength =
            property<pressure>::printed(f.least_yield_strength * 1e6, confidence::published),
        .highest_heating = property<temperature>::printed(f.highest_heating, confidence_of(f.how_sure[12])),
        .heating_limit_reason = words_of(w.heating_limit_reason),
        .remark = words_of(w.remark),
        .documents = words_of(w.documents)};
}

/// Where the numbers of a row come from.
namespace read_in {

// clang-format off
inline constexpr const char* callister = "Callister, Materials Science and Engineering, App. B";
inline constexpr const char* handbooks = "ASM Metals Handbook Desk Edition; EN 10088-1; makers' sheets";
inline constexpr const char* callister_din_7190 = "Callister, Materials Science and Engineering, App. B; DIN 7190-1:2017";
inline constexpr const char* handbooks_bearings = "ASM Metals Handbook Desk Edition; bearing makers' catalogues";
inline constexpr const char* callister_nist = "Callister, Materials Science and Engineering, App. B; NIST cryogenic properties";
inline constexpr const char* callister_handbooks = "Callister, Materials Science and Engineering, App. B; ASM Metals Handbook Desk Edition";
inline constexpr const char* steelmaker = "steelmaker's sheet for 1.4057; EN 10088-1";
inline constexpr const char* en_10090 = "EN 10090:1998; makers' sheets";
inline constexpr const char* en_1561 = "EN 1561; Callister, Materials Science and Engineering, App. B";
inline constexpr const char* en_1563 = "EN 1563; Callister, Materials Science and Engineering, App. B";
inline constexpr const char* en_755 = "EN 485-2; EN 755-2; makers' sheets";
inline constexpr const char* callister_cda = "Callister, Materials Science and Engineering, App. B; Copper Development Association";
inline constexpr const char* en_12164 = "EN 12164; makers' sheets";
inline constexpr const char* callister_astm_bronze = "Callister, Materials Science and Engineering, App. B; ASTM B505, B584";
inline constexpr const char* astm_zinc = "ASTM B86; EN 12844; NADCA die-casting tables";
inline constexpr const char* carbide = "ASM Handbook vol. 16; makers' sheets";
inline constexpr const char* makers = "makers' sheets";
inline constexpr const char* machinery_makers = "Machinery's Handbook; Springer Handbook of Materials Data";
inline constexpr const char* iso_11359 = "makers' sheets (ISO 11359)";
inline constexpr const char* general = "handbooks";
inline constexpr const char* iso_3650 = "ISO 3650:1998";
inline constexpr const char* iso_3585 = "ISO 3585";
// clang-format on

} // namespace read_in

} // namespace fitwright::detail

/// The materials, each a constant. How surely a number is known, each `property` says; the condition for
/// which the yield strength holds, and what else to mind, stand beside it.
namespace fitwright::materials {

// clang-format off
inline constexpr material steel_1018 = on_shelf(detail::figures::steel_1018, {
    material_family::steel, "steel 1018",
    "AISI 1018; 1018; AISI 1020; 1020; carbon steel 1018/1020",
    "cold drawn", detail::read_in::callister,
    "a cold-drawn bar strain-ages and relaxes",
    "annealed or hot rolled it yields at 205 to 250 MPa"});
inline constexpr material steel_c45 = on_shelf(detail::figures::steel_c45, {
    material_family::steel, "steel C45",
    "EN C45; C45; 1.0503; AISI 1045; 1045; AISI 1040; 1040; carbon steel 1040/1045",
    "hot rolled", detail::read_in::callister, "if hardened, stay 30 to 50 K below the last temper"});
inline constexpr material steel_11smnpb30 = on_shelf(detail::figures::steel_11smnpb30, {
    material_family::steel, "steel 11SMnPb30",
    "EN 11SMnPb30; 11SMnPb30; 1.0718; AISI 12L14; 12L14; free-cutting steel",
    "cold drawn", detail::read_in::handbooks, "the lead in it melts at 327 C"});
inline constexpr material steel_a36 = on_shelf(detail::figures::steel_a36, {
    material_family::steel, "steel A36",
    "ASTM A36; A36; EN S275; S275; S275JR; structural steel",
    "hot rolled", detail::read_in::callister, "no heat treatment to lose"});
inline constexpr material steel_42crmo4 = on_shelf(detail::figures::steel_42crmo4, {
    material_family::steel, "steel 42CrMo4",
    "EN 42CrMo4; 42CrMo4; 1.7225; AISI 4140; 4140; alloy steel 4140",
    "quenched and tempered, 28-32 HRC", detail::read_in::callister_din_7190,
    "stay 30 K below the last temper",
    "yield falls with size: 900 MPa up to 16 mm, 650 MPa from 40 to 100 mm"});
inline constexpr material steel_34crnimo6 = on_shelf(detail::figures::steel_34crnimo6, {
    material_family::steel, "steel 34CrNiMo6",
    "EN 34CrNiMo6; 34CrNiMo6; 1.6582; AISI 4340; 4340; alloy steel 4340",
    "quenched and tempered", detail::read_in::callister,
    "some parts are tempered at 200 to 230 C only",
    "yield hangs on the temper: 860 to 1500 MPa"});
inline constexpr material steel_100cr6 = on_shelf(detail::figures::steel_100cr6, {
    material_family::steel, "steel 100Cr6",
    "EN 100Cr6; 100Cr6; 1.3505; AISI 52100; 52100; bearing steel",
    "hardened, 58-62 HRC", detail::read_in::handbooks_bearings,
    "ordinary bearing rings change size",
    "rings stabilised to S0 bear 150 C, S1 200 C, S2 250 C"});
inline constexpr material tool_steel_o1 = on_shelf(detail::figures::tool_steel_o1, {
    material_family::tool_steel, "tool steel O1",
    "AISI O1; O1; 1.2510; oil-hardening tool steel",
    "hardened, 60 HRC", detail::read_in::handbooks, "it is tempered at 150 to 200 C"});
inline constexpr material tool_steel_d2 = on_shelf(detail::figures::tool_steel_d2, {
    material_family::tool_steel, "tool steel D2",
    "AISI D2; D2; 1.2379; cold-work tool steel",
    "hardened, 60 HRC", detail::read_in::handbooks, "it is tempered at 180 to 220 C"});
inline constexpr material tool_steel_m2 = on_shelf(detail::figures::tool_steel_m2, {
    material_family::tool_steel, "high-speed steel M2",
    "AISI M2; M2; HS6-5-2; EN HS6-5-2; 1.3343; tool steel M2; high-speed steel",
    "hardened, 63-65 HRC", detail::read_in::handbooks, "it is tempered at 540 to 560 C"});
inline constexpr material tool_steel_h13 = on_shelf(detail::figures::tool_steel_h13, {
    material_family::tool_steel, "tool steel H13",
    "AISI H13; H13; 1.2344; hot-work tool steel",
    "46-52 HRC", detail::read_in::handbooks, "it is tempered at 560 to 620 C"});
inline constexpr material stainless_303 = on_shelf(detail::figures::stainless_303, {
    material_family::stainless_steel, "stainless 303",
    "AISI 303; 303; EN 1.4305; 1.4305",
    "annealed", detail::read_in::handbooks, "held at 425 to 860 C it loses its resistance to rust"});
inline constexpr material stainless_304 = on_shelf(detail::figures::stainless_304, {
    material_family::stainless_steel, "stainless 304",
    "AISI 304; 304; EN 1.4301; 1.4301",
    "annealed", detail::read_in::callister_nist, "held at 425 to 860 C it loses its resistance to rust"});
inline constexpr material stainless_316 = on_shelf(detail::figures::stainless_316, {
    material_family::stainless_steel, "stainless 316",
    "AISI 316; 316; EN 1.4401; 1.4401",
    "annealed", detail::read_in::callister_handbooks, "held at 425 to 860 C it loses its resistance to rust"});
inline constexpr material stainless_416 = on_shelf(detail::figures::stainless_416, {
    material_family::stainless_steel, "stainless 416",
    "AISI 416; 416; EN 1.4005; 1.4005",
    "tempered, T", detail::read_in::handbooks, "it turns brittle at 400 to 580 C"});
inline constexpr material stainless_440c = on_shelf(detail::figures::stainless_440c, {
    material_family::stainless_steel, "stainless 440C",
    "AISI 440C; 440C; EN 1.4125; 1.4125",
    "hardened, 58 HRC", detail::read_in::callister_handbooks,
    "for full hardness it is tempered at 150 to 180 C",
    "annealed it yields at about 450 MPa"});
inline constexpr material stainless_17_4ph = on_shelf(detail::figures::stainless_17_4ph, {
    material_family::stainless_steel, "stainless 17-4PH",
    "AISI 630; 630; 17-4PH; EN 1.4542; 1.4542",
    "H900", detail::read_in::handbooks,
    "long above 300 C it turns brittle",
    "ageing to H900 shrinks it 0.04 to 0.06 %: finish to size afterwards"});
inline constexpr material stainless_431 = on_shelf(detail::figures::stainless_431, {
    material_family::stainless_steel, "stainless 431",
    "AISI 431; 431; EN 1.4057; 1.4057",
    "QT800", detail::read_in::steelmaker, "it is tempered above 600 C"});
inline constexpr material valve_steel_21_4n = on_shelf(detail::figures::valve_steel_21_4n, {
    material_family::stainless_steel, "valve steel 21-4N",
    "21-4N; EN X53CrMnNiN21-9; X53CrMnNiN21-9; 1.4871; SUH35",
    "solution treated and aged", detail::read_in::en_10090, "it is aged at 760 to 850 C"});
inline constexpr material valve_steel_x45crsi9_3 = on_shelf(detail::figures::valve_steel_x45crsi9_3, {
    material_family::steel, "valve steel X45CrSi9-3",
    "Silchrome 1; valve steel Silchrome 1; EN X45CrSi9-3; X45CrSi9-3; 1.4718; SUH1",
    "quenched and tempered", detail::read_in::en_10090, "it is tempered at 720 to 820 C"});
inline constexpr material grey_iron_gjl_250 = on_shelf(detail::figures::grey_iron_gjl_250, {
    material_family::cast_iron, "grey cast iron GJL-250",
    "EN-GJL-250; GJL-250; ASTM A48 class 30; ASTM A48 class 35; grey iron GJL-250; grey cast iron; gray cast iron",
    "as cast", detail::read_in::en_1561,
    "the iron grows",
    "brittle: count on half its tensile strength; its elasticity falls with load"});
inline constexpr material ductile_iron_gjs_400_15 = on_shelf(detail::figures::ductile_iron_gjs_400_15, {
    material_family::cast_iron, "ductile iron GJS-400-15",
    "EN-GJS-400-15; GJS-400-15; ASTM 60-40-18; 60-40-18; ductile iron; spheroidal graphite cast iron; SG iron",
    "ferritic", detail::read_in::en_1563, "joining limit of DIN 7190-1"});
inline constexpr material aluminium_6061_t6 = on_shelf(detail::figures::aluminium_6061_t6, {
    material_family::aluminium, "aluminium 6061-T6",
    "EN AW-6061 T6; 6061-T6; EN AW-6061; AW-6061; 6061; aluminium 6061; aluminum 6061; aluminum 6061-T6",
    "T6", detail::read_in::callister_nist, "T6 is aged at 160 to 177 C: an hour at 200 C softens it"});
inline constexpr material aluminium_6082_t6 = on_shelf(detail::figures::aluminium_6082_t6, {
    material_family::aluminium, "aluminium 6082-T6",
    "EN AW-6082 T6; 6082-T6; EN AW-6082; AW-6082; 6082; aluminium 6082; aluminum 6082; aluminum 6082-T6; AlSi1MgMn",
    "T6", detail::read_in::en_755, "T6 is aged at 160 to 177 C: an hour at 200 C softens it"});
inline constexpr material aluminium_2024_t351 = on_shelf(detail::figures::aluminium_2024_t351, {
    material_family::aluminium, "aluminium 2024-T351",
    "EN AW-2024 T351; 2024-T351; EN AW-2024; AW-2024; 2024; aluminium 2024; aluminum 2024; aluminum 2024-T351",
    "T351", detail::read_in::callister, "100 to 190 C ages it and lets it corrode"});
inline constexpr material aluminium_7075_t6 = on_shelf(detail::figures::aluminium_7075_t6, {
    material_family::aluminium, "aluminium 7075-T6",
    "EN AW-7075 T6; 7075-T6; 7075-T651; EN AW-7075; AW-7075; 7075; aluminium 7075; aluminum 7075; aluminum 7075-T6",
    "T6, T651", detail::read_in::callister, "it is aged at 120 C"});
inline constexpr material aluminium_356_t6 = on_shelf(detail::figures::aluminium_356_t6, {
    material_family::aluminium, "cast aluminium 356-T6",
    "356.0; 356; 356-T6; EN AC-42000; AC-42000; EN AC-42100; AC-42100; aluminium 356-T6; aluminium casting 356; cast aluminum 356-T6",
    "T6, permanent mould", detail::read_in::callister, "it is aged at about 155 C", "sand cast it yields at 165 MPa"});
inline constexpr material brass_c36000 = on_shelf(detail::figures::brass_c36000, {
    material_family::copper_alloy, "brass C36000",
    "UNS C36000; C36000; C360; free-cutting brass",
    "half hard", detail::read_in::callister_cda,
    "stresses go at 245 to 260 C; the lead in it melts at 327 C",
    "annealed it yields at about 125 MPa"});
inline constexpr material brass_cuzn39pb3 = on_shelf(detail::figures::brass_cuzn39pb3, {
    material_family::copper_alloy, "brass CuZn39Pb3",
    "EN CW614N; CW614N; CuZn39Pb3; CZ121; leaded brass CZ121",
    "R430, half hard", detail::read_in::en_12164, "stresses go at 245 to 260 C; the lead in it melts at 327 C"});
inline constexpr material phosphor_bronze_cusn5 = on_shelf(detail::figures::phosphor_bronze_cusn5, {
    material_family::copper_alloy, "phosphor bronze CuSn5",
    "UNS C51000; C51000; PB102; EN CW451K; CW451K; CuSn5; phosphor bronze 5 %",
    "hard, H04", detail::read_in::callister_cda,
    "it relaxes",
    "a half-hard 25 mm rod yields at 400 MPa, annealed at about 130 MPa"});
inline constexpr material bronze_cusn7zn4pb7 = on_shelf(detail::figures::bronze_cusn7zn4pb7, {
    material_family::copper_alloy, "bearing bronze CuSn7Zn4Pb7",
    "EN CC493K; CC493K; CuSn7Zn4Pb7; CuSn7Zn4Pb7-C; UNS C93200; C93200; SAE 660; bronze CuSn7Zn4Pb7; leaded tin bronze",
    "as cast", detail::read_in::callister_astm_bronze,
    "lead sweats out near 327 C",
    "low yield: a press fit often yields the wall of a bush"});
inline constexpr material aluminium_bronze_c95400 = on_shelf(detail::figures::aluminium_bronze_c95400, {
    material_family::copper_alloy, "aluminium bronze C95400",
    "UNS C95400; C95400; C954; AB1; CC331G; EN CC331G; aluminium bronze; aluminum bronze",
    "as cast", detail::read_in::callister_astm_bronze, "stresses go at 316 C"});
inline constexpr material copper_cu_etp = on_shelf(detail::figures::copper_cu_etp, {
    material_family::copper_alloy, "copper Cu-ETP",
    "Cu-ETP; EN CW004A; CW004A; UNS C11000; C11000; copper ETP",
    "hard, H04", detail::read_in::callister, "a cold-worked bar softens", "annealed it yields at 33 to 69 MPa"});
inline constexpr material beryllium_copper_c17200 = on_shelf(detail::figures::beryllium_copper_c17200, {
    material_family::copper_alloy, "beryllium copper C17200",
    "UNS C17200; C17200; C172; beryllium copper",
    "TH04", detail::read_in::callister, "it is aged at 315 C", "its dust is poisonous: no dry grinding"});
inline constexpr material titanium_6al_4v = on_shelf(detail::figures::titanium_6al_4v, {
    material_family::titanium, "titanium Ti-6Al-4V",
    "Ti-6Al-4V; titanium 6Al-4V; titanium grade 5",
    "annealed", detail::read_in::callister,
    "a brittle skin forms above about 480 C",
    "galls: press it in slowly, with grease"});
inline constexpr material titanium_grade_2 = on_shelf(detail::figures::titanium_grade_2, {
    material_family::titanium, "titanium grade 2",
    "titanium commercially pure; commercially pure titanium grade 2",
    "annealed", detail::read_in::callister});
inline constexpr material magnesium_az31 = on_shelf(detail::figures::magnesium_az31, {
    material_family::magnesium, "magnesium AZ31B",
    "AZ31B; AZ31; magnesium AZ31; magnesium wrought AZ31B",
    "H24, F", detail::read_in::callister,
    "it loses strength quickly",
    "chips and dust burn: no open flame, no water on a fire"});
inline constexpr material magnesium_az91 = on_shelf(detail::figures::magnesium_az91, {
    material_family::magnesium, "magnesium AZ91D",
    "AZ91D; AZ91; magnesium AZ91; magnesium die cast AZ91D",
    "as die cast", detail::read_in::callister, "it creeps", "chips and dust burn: no open flame, no water on a fire"});
inline constexpr material zinc_zamak_3 = on_shelf(detail::figures::zinc_zamak_3, {
    material_family::zinc, "zinc Zamak 3",
    "Zamak 3; EN ZP0400; ZP0400; zinc die cast Zamak 3",
    "as die cast", detail::read_in::astm_zinc,
    "it creeps: no press fit lasts",
    "has no true modulus of elasticity; shrinks 0.07 to 0.09 % as it ages"});
inline constexpr material invar_36 = on_shelf(detail::figures::invar_36, {
    material_family::nickel_alloy, "Invar 36",
    "UNS K93600; K93600; FeNi36; invar",
    "annealed", detail::read_in::callister,
    "from 230 to 280 C on it grows steeply",
    "machining and heat change its expansion"});
inline constexpr material tungsten_carbide_6_co = on_shelf(detail::figures::tungsten_carbide_6_co, {
    material_family::ceramic, "tungsten carbide, 6 % cobalt",
    "tungsten carbide 6 % Co; tungsten carbide 6 Co; ISO K10; K10; ISO K20; K20",
    "sintered", detail::read_in::carbide, "it oxidises", "brittle: keep it in compression; never quench it"});
inline constexpr material silicon_nitride = on_shelf(detail::figures::silicon_nitride, {
    material_family::ceramic, "silicon nitride",
    "",
    "sintered", detail::read_in::makers, "", "brittle"});
inline constexpr material ptfe = on_shelf(detail::figures::ptfe, {
    material_family::plastic, "PTFE",
    "PTFE unfilled",
    "moulded", detail::read_in::machinery_makers,
    "",
    "grows 0.3 to 0.5 % in steps between 15 and 30 C: gauge it at 20 C only; creeps at once when pressed"});
inline constexpr material acetal_pom_c = on_shelf(detail::figures::acetal_pom_c, {
    material_family::plastic, "acetal POM-C",
    "POM-C; acetal copolymer",
    "extruded", detail::read_in::iso_11359, "", "grows 0.2 % when soaked with water"});
inline constexpr material nylon_pa66_dry = on_shelf(detail::figures::nylon_pa66_dry, {
    material_family::plastic, "nylon PA66, dry",
    "PA66 dry; nylon 66 dry; nylon PA66 dry",
    "extruded, dry", detail::read_in::iso_11359,
    "",
    "takes up water: 2.5 % in moist air, 8 % soaked, and grows 0.2 to 0.3 % for each"});
inline constexpr material peek = on_shelf(detail::figures::peek, {
    material_family::plastic, "PEEK",
    "PEEK unfilled",
    "extruded", detail::read_in::makers, "", "above 143 C it grows twice as fast"});
inline constexpr material uhmw_polyethylene = on_shelf(detail::figures::uhmw_polyethylene, {
    material_family::plastic, "UHMW polyethylene",
    "UHMWPE; PE-UHMW",
    "pressed", detail::read_in::makers});
inline constexpr material epoxy_unfilled = on_shelf(detail::figures::epoxy_unfilled, {
    material_family::plastic, "epoxy casting resin, unfilled",
    "epoxy casting resin unfilled; epoxy resin unfilled; epoxy unfilled",
    "cured", detail::read_in::general});
inline constexpr material nickel_200 = on_shelf(detail::figures::nickel_200, {
    material_family::nickel_alloy, "nickel 200",
    "UNS N02200; N02200; nickel alloy 200",
    "annealed", detail::read_in::callister});
inline constexpr material monel_400 = on_shelf(detail::figures::monel_400, {
    material_family::nickel_alloy, "Monel 400",
    "UNS N04400; N04400; alloy 400",
    "annealed", detail::read_in::callister});
inline constexpr material inconel_718 = on_shelf(detail::figures::inconel_718, {
    material_family::nickel_alloy, "Inconel 718",
    "UNS N07718; N07718; alloy 718",
    "aged", detail::read_in::makers, "it is aged at 620 to 720 C"});
inline constexpr material gauge_block_steel = on_shelf(detail::figures::gauge_block_steel, {
    material_family::tool_steel, "gauge-block steel",
    "ISO 3650 steel",
    "hardened, 800 HV", detail::read_in::iso_3650, "a gauge must not change", "lengths are said of 20 C (ISO 1)"});
inline constexpr material granite = on_shelf(detail::figures::granite, {
    material_family::ceramic, "granite",
    "granite surface plate",
    "", detail::read_in::general, "a gauge must not change"});
inline constexpr material borosilicate_glass = on_shelf(detail::figures::borosilicate_glass, {
    material_family::ceramic, "borosilicate glass 3.3",
    "borosilicate glass",
    "", detail::read_in::iso_3585, "", "brittle"});
// clang-format on

} // namespace fitwright::materials

#endif
