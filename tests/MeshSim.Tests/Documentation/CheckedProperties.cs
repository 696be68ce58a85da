using MeshSim.Tests.Fitting;
using MeshSim.Tests.Fitting.Estimation;
using MeshSim.Tests.FloorPlans.Descriptions;
using MeshSim.Tests.FloorPlans.Geometry;
using MeshSim.Tests.Materials;
using MeshSim.Tests.Mesh;
using MeshSim.Tests.Placement;
using MeshSim.Tests.Propagation;
using MeshSim.Tests.Propagation.Fields;
using MeshSim.Tests.Radio;
using MeshSim.Tests.Studies;

namespace MeshSim.Tests.Documentation;

/// <summary>Tests that hold where no table exists, by what they show.</summary>
public static class CheckedProperties
{
    public static readonly IReadOnlyList<(string Heading, (string TestClass, string Test)[] Tests)> Groups =
    [
        ("The same both ways",
        [
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.A_path_meets_the_same_both_ways)),
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.Crossings_come_in_order_along_the_path_both_ways)),
            (nameof(LogDistanceTests), nameof(LogDistanceTests.Both_directions_cost_the_same)),
            (nameof(MultiWallTests), nameof(MultiWallTests.Both_directions_cost_the_same)),
            (nameof(SiteGeneralTests), nameof(SiteGeneralTests.Both_directions_cost_the_same)),
            (nameof(SlabSolverTests), nameof(SlabSolverTests.A_stack_transmits_the_same_from_either_side)),
        ]),
        ("Balance of energy",
        [
            (nameof(SlabSolverTests), nameof(SlabSolverTests.A_lossless_stack_loses_no_energy)),
            (nameof(SlabSolverTests), nameof(SlabSolverTests.No_stack_makes_energy)),
            (nameof(LossCurveTests), nameof(LossCurveTests.Any_stack_gives_a_loss_within_zero_and_the_ceiling)),
        ]),
        ("A house moved, turned, mirrored or cut otherwise",
        [
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.A_moved_house_is_the_same)),
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.A_house_turned_by_a_right_angle_is_the_same)),
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.A_mirrored_house_is_the_same)),
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.Cutting_a_wall_in_two_changes_nothing)),
            (nameof(LogDistanceTests), nameof(LogDistanceTests.A_house_moved_turned_or_mirrored_costs_the_same)),
            (nameof(WallDerivationTests), nameof(WallDerivationTests.A_turned_plan_gives_the_same_walls)),
            (nameof(WallDerivationTests), nameof(WallDerivationTests.A_plan_measured_two_centimetres_off_everywhere_gives_the_same_walls)),
        ]),
        ("Items sum to totals",
        [
            (nameof(LogDistanceTests), nameof(LogDistanceTests.The_total_is_the_sum_of_the_items)),
            (nameof(LogDistanceTests), nameof(LogDistanceTests.Two_floors_cost_the_floor_term_in_equal_shares)),
            (nameof(LinkTableTests), nameof(LinkTableTests.Mountings_of_both_ends_are_items_and_items_sum_to_the_total)),
            (nameof(CoverageStudyTests), nameof(CoverageStudyTests.Items_of_every_link_sum_to_its_loss_and_its_level)),
            (nameof(WallDerivationTests), nameof(WallDerivationTests.Rooms_keep_their_area_and_together_cover_the_whole)),
        ]),
        ("More never turns into less",
        [
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.One_wall_more_takes_no_crossing_away)),
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.Opening_the_doors_takes_crossings_away_and_adds_none)),
            (nameof(LogDistanceTests), nameof(LogDistanceTests.Another_wall_never_helps)),
            (nameof(LogDistanceTests), nameof(LogDistanceTests.Opening_the_doors_never_hurts)),
            (nameof(LinkBudgetTests), nameof(LinkBudgetTests.More_loss_never_helps)),
            (nameof(BitErrorRateTests), nameof(BitErrorRateTests.A_stronger_signal_is_never_worse)),
            (nameof(DeliveryRatioTests), nameof(DeliveryRatioTests.A_higher_level_never_delivers_less)),
            (nameof(FadingMarginTests), nameof(FadingMarginTests.A_higher_availability_never_needs_less)),
            (nameof(RoutingTests), nameof(RoutingTests.A_higher_hop_limit_never_costs_more)),
            (nameof(RoutingTests), nameof(RoutingTests.Adding_a_link_never_lengthens_a_route_nor_takes_a_disjoint_one)),
            (nameof(CoverageStudyTests), nameof(CoverageStudyTests.Opening_all_doors_and_windows_never_lowers_a_margin)),
            (nameof(RepeaterSolverTests), nameof(RepeaterSolverTests.One_more_outlet_serves_no_fewer_and_the_same_devices_with_no_more)),
            (nameof(RepeaterSolverTests), nameof(RepeaterSolverTests.A_tighter_margin_never_makes_it_easier)),
            (nameof(RepeaterSolverTests), nameof(RepeaterSolverTests.A_lower_hop_limit_never_makes_it_easier)),
            (nameof(RepeaterSolverTests), nameof(RepeaterSolverTests.A_link_less_never_makes_it_easier)),
            (nameof(SurvivalSolverTests), nameof(SurvivalSolverTests.One_more_outlet_meets_no_fewer_goals_and_the_same_with_no_more)),
            (nameof(SurvivalSolverTests), nameof(SurvivalSolverTests.More_goals_never_need_fewer_outlets)),
            (nameof(SurvivalSolverTests), nameof(SurvivalSolverTests.Two_ways_never_need_fewer_outlets_than_one)),
        ]),
        ("Two ways to one answer",
        [
            (nameof(LossCurveTests), nameof(LossCurveTests.Between_knots_it_follows_the_planning_loss)),
            (nameof(PlanningLossTests), nameof(PlanningLossTests.The_fixed_thicknesses_stand_for_the_whole_spread)),
            (nameof(FieldTracerTests), nameof(FieldTracerTests.Every_point_has_the_loss_of_its_path)),
            (nameof(MultiWallTests), nameof(MultiWallTests.A_path_costs_what_the_printed_formula_gives)),
            (nameof(BitErrorRateTests), nameof(BitErrorRateTests.On_off_is_the_mean_of_false_alarm_and_miss_by_integration)),
            (nameof(MarcumQTests), nameof(MarcumQTests.It_is_the_integral_of_the_rice_density)),
            (nameof(DeliveryRatioTests), nameof(DeliveryRatioTests.It_is_as_accurate_as_it_says)),
            (nameof(AppliedPlacementTests), nameof(AppliedPlacementTests.In_random_homes_states_and_losses_drop_exactly_what_was_named)),
            (nameof(ReceiverTests), nameof(ReceiverTests.One_reference_frame_in_a_hundred_is_lost_at_the_required_level)),
            (nameof(RadiatedPowerTests), nameof(RadiatedPowerTests.Eirp_gives_back_the_erp)),
        ]),
        ("The best of all that exist, by trying all",
        [
            (nameof(RoutingTests), nameof(RoutingTests.Within_a_hop_limit_routes_are_the_best_of_all_that_exist)),
            (nameof(WidestRoutesTests), nameof(WidestRoutesTests.The_weakest_link_of_each_route_is_as_strong_as_any_route_allows)),
            (nameof(RepeaterSolverTests), nameof(RepeaterSolverTests.The_answer_is_the_best_of_all_subsets)),
            (nameof(SurvivalSolverTests), nameof(SurvivalSolverTests.With_states_and_losses_the_answer_is_the_best_of_all_subsets)),
            (nameof(RepeaterPlacementTests), nameof(RepeaterPlacementTests.No_smaller_set_of_outlets_serves_a_small_home)),
            (nameof(RepeaterPlacementTests), nameof(RepeaterPlacementTests.Each_repeater_serves_the_devices_that_routing_loses_without_it)),
            (nameof(CutFinderTests), nameof(CutFinderTests.Without_its_cut_a_device_is_cut_off_and_any_one_of_it_brings_it_back)),
        ]),
        ("The same every time",
        [
            (nameof(FieldTracerTests), nameof(FieldTracerTests.One_thread_and_many_give_the_same_bits)),
            (nameof(LinkTableTests), nameof(LinkTableTests.The_same_links_come_every_time)),
            (nameof(RepeaterSolverTests), nameof(RepeaterSolverTests.The_same_problem_gets_the_same_answer)),
            (nameof(RepeaterSolverTests), nameof(RepeaterSolverTests.The_order_of_the_devices_changes_nothing)),
        ]),
        ("What was put into readings is found again",
        [
            (nameof(FitProblemTests), nameof(FitProblemTests.Known_parameters_are_recovered_and_intervals_cover)),
            (nameof(FitterTests), nameof(FitterTests.The_device_in_the_metal_box_is_named_first_and_the_rest_is_learnt)),
            (nameof(FitterTests), nameof(FitterTests.A_plan_that_is_right_is_not_contradicted)),
            (nameof(FitterTests), nameof(FitterTests.A_device_that_is_elsewhere_is_told_from_one_in_a_box)),
            (nameof(FitterTests), nameof(FitterTests.A_wall_of_something_else_is_named)),
        ]),
        ("A home worked out on paper ([two-room-home](two-room-home.md))",
        [
            (nameof(TwoRoomHomeTests), nameof(TwoRoomHomeTests.Every_link_is_as_printed)),
            (nameof(TwoRoomHomeTests), nameof(TwoRoomHomeTests.Every_route_is_as_printed)),
            (nameof(TwoRoomHomeTests), nameof(TwoRoomHomeTests.What_drops_out_with_the_lamp_is_as_printed)),
            (nameof(TwoRoomHomeTests), nameof(TwoRoomHomeTests.The_delivery_is_as_printed)),
            (nameof(TwoRoomHomeTests), nameof(TwoRoomHomeTests.The_points_of_the_map_are_as_printed)),
        ]),
    ];

    public static readonly IReadOnlyList<(string Heading, (string TestClass, string Test)[] Tests)> Libraries =
    [
        ("NetTopologySuite, for geometry in the plane",
        [
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.Walls_and_openings_agree_with_an_independent_calculation)),
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.Floors_agree_with_an_independent_calculation)),
            (nameof(CrossingTracerTests), nameof(CrossingTracerTests.Objects_agree_with_an_independent_calculation)),
            (nameof(WallDerivationTests), nameof(WallDerivationTests.The_walls_are_the_union_of_all_room_edges_and_no_two_overlap)),
            (nameof(PredicatesTests), nameof(PredicatesTests.Stretches_touch_and_cross_as_an_independent_calculation_says)),
            (nameof(PolygonTests), nameof(PolygonTests.Locate_agrees_with_an_independent_ray_count_on_random_rings)),
            (nameof(OutlinesTests), nameof(OutlinesTests.An_outline_crosses_itself_exactly_when_its_ring_is_not_simple)),
        ]),
        ("MathNet.Numerics, for least squares",
        [
            (nameof(MapEstimatorTests), nameof(MapEstimatorTests.A_library_regresses_the_same)),
        ]),
        ("QuikGraph, for shortest paths and flows",
        [
            (nameof(RoutingTests), nameof(RoutingTests.Without_a_hop_limit_routes_cost_what_the_shortest_path_library_finds)),
            (nameof(DisjointRoutesTests), nameof(DisjointRoutesTests.The_count_is_the_largest_flow_that_the_flow_library_finds)),
        ]),
    ];
}
